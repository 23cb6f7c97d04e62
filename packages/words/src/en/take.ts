import type { TakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { filterName } from "./filter-name.js";
import { neutral, shown } from "./format.js";

/** What to take from the shelf, and why. */
export const take: Texts<TakeCodes, TakeText> = {
  lens_filter: (p) => ({ what: filterName(p.filter), why: "The plan has it on the lens." }),
  neutral_density: (p) => ({ what: neutral(p.density), why: "It is too bright without." }),
  lamp_filters: (p) => ({
    what: `${filterName(p.filter)} for each video light`,
    why: "It matches them to daylight at depth.",
  }),
  lamp_filters_lacking: (p) => ({
    what: `a ${p.kind} lamp filter of density ${shown(p.density, 1)} for each video light`,
    why: "The kit has none that matches: with it the video lights could stay on.",
  }),
  lamp: () => ({ what: "the video lights", why: "The plan uses them, or leaves them off but on the rig." }),
  card: () => ({
    what: "a grey or white card",
    why: "Every balance is made on it: clip it where you reach it with one hand.",
  }),
  spares: () => ({
    what: "full batteries, an empty memory card, spare O-rings and a drying insert",
    why: "A flat battery, a flood or a fogged port ends the filming.",
  }),
};
