import type { MountTakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { shown } from "./format.js";
import { spoken } from "./list.js";
import { mountingHolders } from "./mounting-holders.js";

/** What holds the filters of a plan. */
export const mountingTake: Texts<MountTakeCodes, TakeText> = {
  holder: (p) => ({ what: mountingHolders[p.holder], why: "It holds the filter." }),
  rings: (p) => ({
    what: `the step rings ${spoken(p.rings)}`,
    why: "They lead from the thread of lens or port to that of the filter.",
  }),
  ring_lacking: (p) => ({
    what: `a step ring from ${shown(p.from_mm)} to ${shown(p.to_mm)} mm`,
    why: "Your rings do not lead to the filter.",
  }),
};
