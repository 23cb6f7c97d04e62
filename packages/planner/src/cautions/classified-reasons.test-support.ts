/** What every reason of an answer advises, by its code. Tests only. */
import type { AttenuationReasons } from "../codes/attenuation.js";
import type { CircumstanceReasons } from "../codes/circumstances.js";
import type { ColourRecoveryReasons } from "../codes/colour-recovery.js";
import type { ExposureLossReasons } from "../codes/exposure-loss.js";
import type { FilterChoiceReasons } from "../codes/filter-choice.js";
import type { LightReasons } from "../codes/light.js";
import type { MixedLightReasons } from "../codes/mixed-light.js";
import type { WhiteBalanceReasons } from "../codes/white-balance.js";

/** A filter is changed on land or under water, as the scene's mount has it. */
export type Advised = "light" | "way_up" | "balance" | "closer" | "filter" | "filter_in_water";

export type Judged<Catalogue> = { readonly [Code in keyof Catalogue]: readonly Advised[] };

export const NOTHING = [] as const;

export const CLASSIFIED_REASONS: Judged<
  AttenuationReasons &
    ColourRecoveryReasons &
    ExposureLossReasons &
    FilterChoiceReasons &
    LightReasons &
    MixedLightReasons &
    CircumstanceReasons &
    WhiteBalanceReasons
> = {
  red_goes_first: NOTHING,
  no_daylight_relative: NOTHING,
  sun_path: NOTHING,
  red_record: NOTHING,
  filter_helps_red: NOTHING,
  filter_does_not_help_red: NOTHING,
  same_settings_no_gain: NOTHING,
  red_is_gone: NOTHING,
  red_codes: NOTHING,
  too_bright: NOTHING,
  aperture_can_close: NOTHING,
  too_dark: ["light", "way_up"],
  exposure_fits: NOTHING,
  levels_apart: NOTHING,
  auto_exposes_picture: NOTHING,
  filter_makes_it_darker: ["filter"],
  any_filter_would_worsen: NOTHING,
  port_takes: NOTHING,
  water_takes_most: NOTHING,
  haze_is_the_limit: ["closer"],
  subject_out_of_sight: ["closer"],
  filter_earns: ["filter"],
  no_filter_earns: NOTHING,
  no_filter_owned: NOTHING,
  finish_judged: NOTHING,
  finish_turns_choice: NOTHING,
  change_at_depth: ["filter", "way_up", "balance"],
  serves_part_of_range: ["filter"],
  part_would_gain: NOTHING,
  denser_gains_nothing_below: NOTHING,
  only_lamps_would_help: ["light", "way_up", "closer"],
  filter_brings_balance_into_reach: ["filter"],
  balance_out_of_reach: NOTHING,
  balance_in_reach_without: NOTHING,
  light_to_spare: NOTHING,
  densest_tried: NOTHING,
  light_is_too_much: NOTHING,
  colour_filter_as_neutral: NOTHING,
  light_has_run_out: NOTHING,
  light_holds_density: NOTHING,
  densities_as_good: ["filter"],
  no_red_to_gain: NOTHING,
  filter_adds_no_red: ["filter"],
  lamps_are_the_only_light: ["light", "balance"],
  near_tie: NOTHING,
  filter_shape_assumed: NOTHING,
  filter_trade_rule_blue: ["filter"],
  filter_trade_rule_green: ["filter"],
  cct_without_meaning: ["balance"],
  cct_beyond_locus: ["balance"],
  red_not_only_transmitted: NOTHING,
  sun_stands: NOTHING,
  cloud_fills_shadow: NOTHING,
  clock_shows_twice: NOTHING,
  night_there: ["light"],
  overhead_cuts: NOTHING,
  lamps_only: ["light", "balance"],
  daylight_only: NOTHING,
  lights_fight: ["light"],
  to_lead: ["light", "closer"],
  lamps_lead: ["light", "balance"],
  daylight_leads: ["light", "balance"],
  mixing_zone: ["light"],
  lit_haze: ["light", "closer"],
  upright_subject: NOTHING,
  kelvin_leaves_the_water: ["light", "balance"],
  balance_again: ["balance"],
  one_balance_serves: ["balance"],
  balance_in_reach: NOTHING,
  dense_for_balance: NOTHING,
  mouth_is_brighter: ["light"],
  subject_against_light: NOTHING,
  low_sun_moves: NOTHING,
  cloud_lights_evenly: NOTHING,
  weed_tints: NOTHING,
  blue_is_missing: NOTHING,
  automatic_colours: ["closer"],
  balance_falls_short: NOTHING,
  kelvin_balance_leaves: NOTHING,
  auto_balance_leaves: NOTHING,
};
