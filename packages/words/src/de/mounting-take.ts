import type { MountTakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { shown, spoken, unit } from "./format.js";
import { mountingHolders } from "./mounting-holders.js";

/** Was die Filter eines Plans hält. */
export const mountingTake: Texts<MountTakeCodes, TakeText> = {
  holder: (p) => ({ what: mountingHolders[p.holder].wen, why: "Er hält den Filter." }),
  rings: (p) => ({
    what: `die Step-Ringe ${spoken(p.rings)}`,
    why: "Sie führen vom Gewinde von Objektiv oder Port zu dem des Filters.",
  }),
  ring_lacking: (p) => ({
    what: `einen Step-Ring von ${shown(p.from_mm)} auf ${unit(shown(p.to_mm), "mm")}`,
    why: "Mit deinen Ringen kommst du nicht bis zum Filter.",
  }),
};
