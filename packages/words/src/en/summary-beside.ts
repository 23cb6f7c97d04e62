import type { SummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { filterName } from "./filter-name.js";
import { depth, kelvin, span, stops } from "./format.js";

/** What only some plans come to, in a sentence each. */
export const summaryBeside: Texts<
  Pick<SummaryCodes, "carry" | "too_dark" | "expose_by_itself" | "balance_by_itself" | "balance_in_kelvin">,
  string
> = {
  carry: (p, u) => `Carry ${filterName(p.filter)} and use it from ${span(p.from_m, p.to_m, u)}.`,
  too_dark: (p, u) => `At ${depth(p.depth_m, u)} it is ${stops(p.shortfall_stops)} too dark.`,
  expose_by_itself: () => "Leave the exposure to the camera.",
  balance_by_itself: () => "Leave the white balance on automatic.",
  balance_in_kelvin: (p) => `Set the white balance to ${kelvin(p.cct_K)} K.`,
};
