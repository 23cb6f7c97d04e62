import type { TakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { filterName } from "./filter-name.js";
import { shown } from "./format.js";

/** What to take from the shelf, and why. */
export const take: Texts<TakeCodes, TakeText> = {
  lens_filter: (p) => ({
    what: filterName(p.filter),
    why: "It leaves the least colour error of the filters owned.",
  }),
  neutral_density: (p) => ({
    what: `a neutral filter of density ${shown(p.density, 1)}`,
    why: "The shallow end is too bright for the camera's limits.",
  }),
  lamp_filters: () => ({
    what: "lamp filters, one for each lamp",
    why: "They match the lamps to daylight at depth.",
  }),
  lamp_filters_lacking: (p) => ({
    what: `a ${p.kind} lamp filter of density ${shown(p.density, 2)} for each lamp`,
    why: "The kit has none that matches: with it the lamps could stay on.",
  }),
  lamp: () => ({ what: "a lamp", why: "The plan uses lamps." }),
  card: () => ({ what: "a grey or white card", why: "Every balance in the plan is made on it." }),
};
