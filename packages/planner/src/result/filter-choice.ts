import type { FilterChoiceReasons } from "../codes/filter-choice.js";
import type { LightReasons } from "../codes/light.js";
import type { FilterVerdict } from "../codes/named-filter.js";
import type { NonEmpty } from "../lists/non-empty.js";
import type { Finish } from "../scene/scene.js";
import type { AnswerParts, Estimate } from "./common.js";

export interface FilterChoiceAnswer
  extends FilterChoiceFigures,
    AnswerParts<FilterChoiceReasons & LightReasons> {
  /** What is done with the picture before it is looked at: what all colour errors of the answer are judged by. */
  finish: Finish;
  /** What the other finishes make of the advised choice, its runner-up and no filter. */
  other_finishes: OtherFinish[];
  /** No filter and every filter of the kit, the one advised first; absent without a kit. */
  ranking?: NonEmpty<RankedFilter>;
}

/** One of what is owned. */
export interface RankedFilter {
  filter_kind: FilterVerdict;
  filter_density?: number;
  filter_id?: string;
  /** Mean colour error over the range. */
  colour_error_delta_e00: Estimate;
  /** Probability that nothing else of the ranking is better, given what a filter has to earn. */
  probability_best: number;
  filter_loss_stops: Estimate;
  /** Part of the range in which it leaves less error than no filter, or no filter no more than any. */
  serves_min_depth_m?: number;
  serves_max_depth_m?: number;
}

export interface FilterChoiceFigures {
  /** What to mount for the whole range. */
  filter_kind: FilterVerdict;
  /** Absent when the advice is `none`. */
  filter_density?: number;
  /** Densities of that kind between which nobody can tell the colours from the best; absent for `none` and what is owned. */
  as_good_from_density?: number;
  as_good_to_density?: number;
  /** The caller's id of the filter, where it comes from the kit. */
  filter_id?: string;
  /** Neutral density to add, as the shallow end is too bright for the camera's limits with the advised choice; absent when not. */
  neutral_density?: number;
  /** `clear`, or `near_tie` where the runner-up could as well be the better one. */
  verdict: "clear" | "near_tie";
  /** Mean colour error of the 24-patch chart over the range with the advised choice, in CIEDE2000. */
  colour_error_delta_e00: Estimate;
  /** The same with no filter. */
  colour_error_without_delta_e00: Estimate;
  runner_up: RunnerUp;
  /** What the advised filter costs in exposure; zero when the advice is `none`. */
  filter_loss_stops: Estimate;
  /** Part of the filmed range in which the advised filter leaves less error than none, or none less than the best filter. */
  serves_min_depth_m?: number;
  serves_max_depth_m?: number;
  /** Depths at which to mount it, or take it off, where the mount lets the diver change underwater; absent elsewhere. */
  change_depths_m?: number[];
  depths: NonEmpty<FilterAtDepth>;
}

export interface OtherFinish {
  finish: Finish;
  /** The best of the three under it. */
  filter_kind: FilterVerdict;
  filter_density?: number;
  filter_id?: string;
  advised_colour_error_delta_e00: number;
  runner_up_colour_error_delta_e00: number;
  without_colour_error_delta_e00: number;
}

export interface RunnerUp {
  filter_kind: FilterVerdict;
  filter_density?: number;
  filter_id?: string;
  colour_error_delta_e00: Estimate;
  /** Colour error of the runner-up minus that of the advised choice. */
  loses_by_delta_e00: Estimate;
  /** Probability that the runner-up is the better choice, 0 to 1. */
  probability_better: number;
}

export interface FilterAtDepth {
  depth_m: number;
  /** The best choice at this depth alone. */
  best_filter_kind: FilterVerdict;
  best_filter_density?: number;
  best_colour_error_delta_e00: number;
  advised_colour_error_delta_e00: number;
  without_colour_error_delta_e00: number;
  /** Share of the red channel's signal that comes from light above 600 nm, 0 to 1. */
  advised_red_signal_above_600_nm_share: number;
  without_red_signal_above_600_nm_share: number;
  /** Whether the camera can balance white here with the advised choice, and without a filter. */
  advised_balance_in_reach: boolean;
  without_balance_in_reach: boolean;
}
