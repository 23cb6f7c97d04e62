import type { TakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { filterName } from "./filter-name.js";
import { densityOf, neutral } from "./format.js";

/** What to take from the shelf, and why. */
export const take: Texts<TakeCodes, TakeText> = {
  lens_filter: (p) => ({ what: filterName(p.filter), why: "The plan puts it on the lens." }),
  neutral_density: (p) => ({ what: neutral(p.density), why: "It is too bright without it." }),
  lamp_filters: (p) => ({
    what: `${filterName(p.filter)} for each video light`,
    why: "It matches them to daylight at depth.",
  }),
  lamp_filters_lacking: (p) => ({
    what: `a ${p.kind} filter of density ${densityOf(p.density)} for each video light`,
    why: "Your kit has none that matches. With these you could leave the video lights on.",
  }),
  lamp: () => ({ what: "the video lights", why: "The plan uses them, or leaves them off but on the rig." }),
  card: () => ({
    what: "a grey or white card",
    why: "You set every white balance on it: clip it where you can reach it with one hand.",
  }),
  spares: () => ({
    what: "full batteries, an empty memory card, spare O-rings and a drying insert",
    why: "A flat battery, a full card, a leak or a fogged port ends the filming.",
  }),
};
