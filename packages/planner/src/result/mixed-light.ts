import type { Coded } from "../codes/coded.js";
import type { LightReasons } from "../codes/light.js";
import type { LumensVerdict, MixedLightReasons } from "../codes/mixed-light.js";
import type { WaysOut } from "../codes/ways-out.js";
import type { NonEmpty } from "../lists/non-empty.js";
import type { FilterKind, TransmittanceSample } from "../scene/scene.js";
import type { AnswerParts, Estimate } from "./common.js";

export type MixedLightVerdict =
  | "lamps_only"
  | "lamps_lead"
  | "lights_fight"
  | "daylight_leads"
  | "daylight_only";
export type WayOutKind = "lamps_off" | "lamp_filter" | "balance_to_lamps" | "balance_to_both" | "come_closer";

export interface MixedLightAnswer extends AnswerParts<MixedLightReasons & LightReasons> {
  /** What to set the white balance to. */
  balance_to: "daylight" | "lamps";
  /** The range as stretches of one verdict, shallow first: where lamps lead, daylight leads, or they fight. */
  zones: MixedLightZone[];
  depths: NonEmpty<MixedLightAtDepth>;
}

export interface MixedLightZone {
  verdict: MixedLightVerdict;
  min_depth_m: number;
  max_depth_m: number;
}

/** What lamps take to lead daylight by as much as was asked for. */
export interface ToLead {
  /** Of all lamps together; 1e9 stands for that and more. */
  lumens_needed_lm: Estimate;
  lumens_verdict: LumensVerdict;
  /** Largest distance at which the scene's lamps do it; absent where they do not from any. */
  own_lamps_lead_from_m?: number;
}

/** What leads daylight is there where it was asked for, and there is daylight. */
export interface MixedLightAtDepth extends Partial<ToLead> {
  depth_m: number;
  verdict: MixedLightVerdict;
  /** `near_tie` where the split may as well lie on the other side of what is visible; absent unless both lights are there. */
  verdict_clarity?: "clear" | "near_tie";
  /** Lamp light over daylight on the upright subject, per sensor channel; absent unless both are there. */
  red_lamp_over_daylight_stops?: Estimate;
  green_lamp_over_daylight_stops?: Estimate;
  blue_lamp_over_daylight_stops?: Estimate;
  /** Illuminance on the upright subject from the lamps, and from daylight. */
  lamp_illuminance_lx: Estimate;
  daylight_illuminance_lx: Estimate;
  /** Colour difference between a grey lit as the subject is and one lit by daylight alone, after balancing to daylight; absent unless both lights are there. */
  split_delta_e00?: Estimate;
  /** The same for what only daylight lights, after balancing to the lamps, and after balancing half way between. */
  split_balanced_to_lamps_delta_e00?: Estimate;
  split_balanced_between_delta_e00?: Estimate;
  /** How much more red than green the lamps add, seen from a balance to daylight; absent unless both lights are there. */
  red_excess_stops?: Estimate;
  /** What the water from lamp to subject to camera takes from the lamp's light, per channel; absent without lamps. */
  lamp_red_water_loss_stops?: Estimate;
  lamp_green_water_loss_stops?: Estimate;
  lamp_blue_water_loss_stops?: Estimate;
  /** How much darker the lamps light what lies a metre behind the subject; absent without lamps. */
  lamp_falloff_1_m_behind_stops?: number;
  /** Luminance of the haze that the lamps light between camera and subject, in percent of an 18 % grey subject; an estimate. */
  lit_haze_percent?: Estimate;
  /** Best first; empty where the lights do not fight. */
  ways_out: WayOut[];
}

export type WayOut = Coded<WaysOut> & {
  way: WayOutKind;
  /** Colour split that is left when it is done. */
  split_left_delta_e00: number;
  /** Light on the subject lost by it; negative when it gains light. */
  cost_stops: number;
  /** `lamp_filter`: the filter to mount on each lamp, and what it lets through per channel, relative to its clearest channel. */
  lamp_filter_kind?: FilterKind;
  lamp_filter_density?: number;
  lamp_filter_red_transmittance?: number;
  lamp_filter_green_transmittance?: number;
  lamp_filter_blue_transmittance?: number;
  /** The same as a curve: what to ask a maker for. */
  lamp_filter_transmittance?: TransmittanceSample[];
  /** `lamp_filter`: luminous flux left of each lamp. */
  lamp_flux_left_lm?: number[];
  /** `come_closer`: distance from the lamps at which they lead. */
  lamp_distance_m?: number;
};
