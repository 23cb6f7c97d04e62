import type { CircumstanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth } from "../format.js";

/** Of those, what many a plan says of its filter: it is not loaded on demand. */
export type FilterCircumstance = "dense_for_balance" | "blue_is_missing";

/** English texts of what the light of a dive asks of its filter. */
export const filterCircumstances: Texts<Pick<CircumstanceReasons, FilterCircumstance>, string> = {
  dense_for_balance: (p, u) =>
    `So dense a filter is for the white balance: with it a card comes out neutral down to about ${depth(p.with_m, u)}, without it ${p.without ? `only to ${depth(p.without.to_m, u)}` : "nowhere on this dive"}.`,
  blue_is_missing: () =>
    "In this water blue is missing, more than red, and no filter adds any. Holding back green, this one lets the camera lift both.",
};
