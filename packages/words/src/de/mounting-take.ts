import type { MountTakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { shown, spoken, unit } from "./format.js";
import { mountingHolders } from "./mounting-holders.js";

/** Was die Filter eines Plans hält. */
export const mountingTake: Texts<MountTakeCodes, TakeText> = {
  holder: (p) => ({ what: mountingHolders[p.holder].wen, why: "So ist der Filter befestigt." }),
  rings: (p) => ({
    what: `${p.rings.length === 1 ? "den Step-Ring" : "die Step-Ringe"} ${spoken(p.rings)}`,
    why: "Damit kommst du vom Gewinde von Objektiv oder Port zu dem des Filters.",
  }),
  ring_lacking: (p) => ({
    what: `einen Step-Ring von ${shown(p.from_mm)} auf ${unit(shown(p.to_mm), "mm")}`,
    why: "Mit deinen Ringen kommst du nicht bis zum Filter.",
  }),
};
