import type { Metering } from "../camera/camera-state.js";
import type { Finish } from "../scene/scene.js";
import type { Nothing } from "./coded.js";
import type { FilterVerdict, NamedFilter } from "./named-filter.js";

/** What decides the choice of a filter. */
export interface FilterMainReasons {
  filter_earns: { filter: NamedFilter; min_m: number; max_m: number; with_e: number; without_e: number };
  no_filter_earns: { best: NamedFilter; best_change: number; worthwhile: number };
  no_filter_owned: Nothing;
  subject_out_of_sight: { distance_m: number; visibility_m: number };
  change_at_depth: { from_m: number; to_m: number };
  serves_part_of_range: { from_m: number; to_m: number };
  part_would_gain: { kind: FilterVerdict; from_m: number; to_m: number };
  only_lamps_would_help: { error: number };
  densities_as_good: { from_density: number; to_density: number };
  no_red_to_gain: { filter: NamedFilter; depth_m: number; share: number };
  filter_adds_no_red: { depth_m: number; with_share: number; without_share: number };
  lamps_are_the_only_light: { lamp?: { cct_K: number } };
  near_tie: { probability: number; runner_up: NamedFilter; loses_by: number; worthwhile: number };
}

/** Reasons on the choice of a filter. */
export interface FilterChoiceReasons extends FilterMainReasons {
  denser_gains_nothing_below: { depth_m: number; density: number };
  filter_brings_balance_into_reach: {
    depth_m: number;
    deepest_m: number;
    residual_stops: number;
    /** Where the camera then reaches a balance: absent where it comes closer and no more. */
    reach_from_m?: number;
    reach_to_m?: number;
  };
  balance_out_of_reach: { depth_m: number; deepest_m: number; residual_stops: number };
  balance_in_reach_without: Nothing;
  /** How the picture is taken to be finished. */
  finish_judged: { finish: Finish };
  /** That another finish would turn the choice, and to what. */
  finish_turns_choice: { finish: Finish; filter: NamedFilter; error: number; advised_error: number };
  light_to_spare: { depth_m: number; f_number: number; iso: number; metering: Metering };
  light_is_too_much: {
    depth_m: number;
    excess_stops: number;
    density: number;
    iso: number;
    f_number: number;
    metering: Metering;
  };
  colour_filter_as_neutral: Nothing;
  light_has_run_out: {
    depth_m: number;
    iso: number;
    short_stops: number;
    f_number: number;
    metering: Metering;
  };
  light_holds_density: {
    wanted: NamedFilter;
    depth_m: number;
    iso: number;
    f_number: number;
    shutter_s: number;
  };
  /** That the search ends at this density, where the best filter of its kind is the densest. */
  densest_tried: { density: number };
  filter_shape_assumed: Nothing;
  filter_trade_rule_blue: Nothing;
  filter_trade_rule_green: Nothing;
}
