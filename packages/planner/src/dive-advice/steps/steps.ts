import type { DiveStep } from "../../result/dive-advice.js";
import type { Decisions } from "../decisions.js";
import { afterDive } from "./after.js";
import { beforeDive } from "./before.js";
import { goingDown } from "./down.js";
import { lampSteps } from "./lamps.js";
import { atStart } from "./start.js";
import { comingUp } from "./up.js";

/** The plan, in the order in which things are done. */
export const stepsOf = (d: Decisions): DiveStep[] =>
  withShutterSetBack(
    [
      ...beforeDive(d),
      ...atStart(d),
      ...goingDown(d),
      ...(d.lampPlan === "none" ? [] : lampSteps(d)),
      ...comingUp(d),
      ...afterDive(d),
    ],
    d.scene.shutter_s,
  );

/** A step after one with an exposure time of its own gives that of the plan again. */
function withShutterSetBack(steps: DiveStep[], shutter_s: number): DiveStep[] {
  let isOwn = false;
  return steps.map((one) => {
    if (!("iso" in one.parameters) || !("f_number" in one.parameters)) return one;
    const wasOwn = isOwn;
    isOwn = "shutter" in one.parameters;
    const isSetBack = wasOwn && !isOwn;
    return isSetBack
      ? ({ ...one, parameters: { ...one.parameters, shutter: { shutter_s } } } as DiveStep)
      : one;
  });
}
