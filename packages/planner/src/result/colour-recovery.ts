import type { ColourRecoveryReasons, RedQuality } from "../codes/colour-recovery.js";
import type { LightReasons } from "../codes/light.js";
import type { NonEmpty } from "../lists/non-empty.js";
import type { AnswerParts, Estimate } from "./common.js";

/** `no_filter`, each at its best exposure; `filter_same_settings` keeps ISO, aperture, shutter and neutral density of `no_filter`. */
export type RecordingKind = "no_filter" | "filter_best_exposure" | "filter_same_settings";

export interface ColourRecoveryAnswer extends AnswerParts<ColourRecoveryReasons & LightReasons> {
  depths: NonEmpty<RecoveryAtDepth>;
  /** Depth down to which red light above 600 nm is recorded acceptably without a filter; absent without daylight. */
  red_acceptable_to_without_filter_depth_m?: Estimate;
  /** Depth from which it is gone without a filter. */
  red_gone_from_without_filter_depth_m?: Estimate;
  /** The same two with the filter of the scene; absent without one. */
  red_acceptable_to_with_filter_depth_m?: Estimate;
  red_gone_from_with_filter_depth_m?: Estimate;
  /** Depth below which red made by the water itself outweighs red from the surface at 650 nm; absent without daylight. */
  red_trusted_to_depth_m?: number;
}

export interface RecoveryAtDepth {
  depth_m: number;
  /** An 18 % grey as recorded, without a filter and, where the scene has one, with it. */
  recordings: Recording[];
}

/** An 18 % grey, per pixel as looked at. */
export interface Recording {
  recording: RecordingKind;
  iso: number;
  f_number: number;
  shutter_s: number;
  /** Neutral density in front of the lens, where there is too much light at these settings. */
  neutral_density?: number;
  /** Electrons that light frees in each channel. */
  red_electrons: number;
  green_electrons: number;
  blue_electrons: number;
  /** Signal over noise. */
  red_signal_to_noise: number;
  green_signal_to_noise: number;
  blue_signal_to_noise: number;
  /** Share of the red channel's signal that is light above 600 nm, and what is left of signal over noise for it alone. */
  red_above_600_nm_share: number;
  red_light_signal_to_noise: Estimate;
  red_quality: RedQuality;
  /** Gain that grading still has to give red after the camera's balance, against the strongest channel. */
  red_gain_needed: number;
  /** Code values to a stop of red around that grey. */
  red_codes_per_stop_8_bit: number;
  red_codes_per_stop_10_bit: number;
  red_codes_per_stop_12_bit: number;
}
