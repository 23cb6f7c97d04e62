import type { DiveStep } from "../../result/dive-advice.js";
import type { Decisions } from "../decisions.js";
import { afterDive } from "./after.js";
import { beforeDive } from "./before.js";
import { goingDown } from "./down.js";
import { lampSteps } from "./lamps.js";
import { atStart } from "./start.js";
import { comingUp } from "./up.js";

/** The plan, in the order in which things are done. */
export const stepsOf = (d: Decisions): DiveStep[] => [
  ...beforeDive(d),
  ...atStart(d),
  ...goingDown(d),
  ...(d.lampPlan === "none" ? [] : lampSteps(d)),
  ...comingUp(d),
  ...afterDive(d),
];
