import type { CautionCode } from "../codes/cautions.js";

/** What an answer may advise that calls for cautions: a light, depths on the way up, a white balance, coming closer, changing a filter. */
export type Advice = "light" | "way_up" | "balance" | "closer" | "filter_on_land" | "filter_under_water";

export const CAUTIONS_OF: Readonly<Record<Advice, readonly CautionCode[]>> = {
  light: ["lamps_in_water_only", "lamps_not_into_eyes", "lamps_stay_on_rig", "batteries_by_maker"],
  way_up: ["ascent_first"],
  balance: ["hover_to_balance"],
  closer: ["closer_under_control"],
  filter_on_land: ["filter_on_dry_land"],
  filter_under_water: ["filter_flip_practised"],
};

/**
 * What reasons, ways to pay, ways out and causes of doubt advise, by their codes, beyond what scene and decision already call for.
 * A test holds every code of every text against the cautions of the answers that say it.
 */
const ADVISED_BY: Readonly<Record<string, readonly Advice[]>> = {
  night_there: ["light"],
  too_dark: ["light", "way_up"],
  lamp: ["light", "balance"],
  lamps_would_help: ["light"],
  only_lamps_would_help: ["light", "way_up", "closer"],
  shallower: ["way_up"],
  change_at_depth: ["way_up", "balance"],
  lamps_are_the_only_light: ["balance"],
  cct_without_meaning: ["balance"],
  cct_beyond_locus: ["balance"],
  haze_is_the_limit: ["closer"],
  subject_out_of_sight: ["closer"],
  lit_haze: ["closer"],
  to_lead: ["light", "closer"],
  come_closer: ["closer"],
  come_close: ["closer"],
  automatic_colours: ["closer"],
};

export const advisedBy = (codes: readonly string[]): Advice[] =>
  codes.flatMap((code) => ADVISED_BY[code] ?? []);
