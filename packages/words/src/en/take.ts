import type { TakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { filterName } from "./filter-name.js";
import { takeBeside } from "./take-beside.js";

/** What to take from the shelf, and why. */
export const take: Texts<TakeCodes, TakeText> = {
  ...takeBeside,
  lens_filter: (p) => ({ what: filterName(p.filter), why: "The plan puts it on the lens." }),
  card: () => ({
    what: "a grey or white card, or a white slate",
    why: "You set every white balance on it: clip it where you can reach it with one hand.",
  }),
  spares: () => ({
    what: "full batteries, an empty memory card, spare O-rings and a drying insert",
    why: "A flat battery, a full card, a leak or a fogged port ends the filming.",
  }),
};
