import type { Reason } from "../codes/coded.js";
import type { ClipReasons, MarkReasons, MomentReasons, TimelineReasons } from "../codes/dive-timelines.js";
import type { FilterVerdict } from "../codes/named-filter.js";
import type { LensEvent } from "../dive-timeline/plan.js";
import type { AnswerParts, Estimate } from "./common.js";

export type MomentAction = LensEvent | "exposure";

/** A moment at which the camera is, or was, to be set. */
export interface TimelineMoment {
  /** Since the dive began. */
  time_s: number;
  depth_m: number;
  action: MomentAction;
  /** What is metered from then on. */
  exposure_value_ev100: Estimate;
  iso: number;
  f_number: number;
  shutter_s: number;
  /** Above 0 where even the least sensitive settings are too bright, below 0 where the most sensitive are too dark. */
  off_by_stops: number;
  /** Of a balance: cast on grey with the last one; absent where there was none. */
  cast_before_delta_e00?: Estimate;
  /** And with this one. */
  cast_after_delta_e00?: Estimate;
  reason: Reason<MomentReasons>;
}

export type ClipBalance = "held" | "close" | "lost" | "not_set";

export interface TimelineClip {
  id?: string;
  /** Since the dive began. */
  from_s: number;
  to_s: number;
  min_depth_m: number;
  max_depth_m: number;
  through_filter: boolean;
  /** Mean over the clip. */
  exposure_value_ev100: Estimate;
  /** From its darkest to its brightest moment. */
  exposure_span_stops: number;
  iso: number;
  f_number: number;
  shutter_s: number;
  off_by_stops: number;
  red_left_percent: Estimate;
  balance: ClipBalance;
  /** Cast on grey with the last balance where it is largest, and what a balance made then and there would leave. */
  cast_delta_e00?: Estimate;
  cast_if_balanced_delta_e00: Estimate;
  reason: Reason<ClipReasons>;
}

export type MarkedThing =
  | "exposure"
  | "red_attenuation"
  | "green_attenuation"
  | "blue_attenuation"
  | "filter_density"
  | "balance_reach";
export type MarkVerdict = "agrees" | "more" | "less";

/** What was predicted against what the cards of the dive show, in the unit of the thing. */
export interface TimelineMark {
  marks: MarkedThing;
  /** Of an exposure and of a reach: the frame, as it was given, and its depth. */
  frame?: number;
  depth_m?: number;
  predicted: Estimate;
  measured: Estimate;
  /** Of an exposure: what the camera was set to. */
  used_ev100?: number;
  verdict: MarkVerdict;
  reason: Reason<MarkReasons>;
}

export interface DiveTimelineResult extends AnswerParts<TimelineReasons> {
  min_depth_m: number;
  max_depth_m: number;
  length_s: number;
  /** Where it is known what was on the lens and when white was balanced. */
  done_by: "events" | "plan";
  filter_kind: FilterVerdict;
  filter_density?: number;
  filter_id?: string;
  balance_depths_descending_m: number[];
  balance_depths_ascending_m: number[];
  balance_tolerance_delta_e00: number;
  moments: TimelineMoment[];
  clips: TimelineClip[];
  /** Present where there are cards of the dive. */
  marks?: TimelineMark[];
}
