import type { Coded } from "../codes/coded.js";
import type { ExposureLossReasons } from "../codes/exposure-loss.js";
import type { LightReasons } from "../codes/light.js";
import type { WaysToPay } from "../codes/ways-to-pay.js";
import type { NonEmpty } from "../lists/non-empty.js";
import type { AnswerParts, Estimate } from "./common.js";

export type ExposureVerdict = "fits" | "too_dark" | "too_bright";

export interface ExposureLossAnswer extends AnswerParts<ExposureLossReasons & LightReasons> {
  depths: NonEmpty<ExposureAtDepth>;
}

/** The budget from the surface to the sensor at one depth, and how to pay for it. */
export interface ExposureAtDepth {
  depth_m: number;
  /** Daylight lost at the surface by reflection; absent without daylight, as are the next two. */
  surface_loss_stops?: Estimate;
  /** Daylight lost on the way down. */
  depth_loss_stops?: Estimate;
  /** What a solid subject that faces the camera receives less than a level surface. */
  upright_loss_stops?: Estimate;
  /** Lost between subject and camera. */
  distance_loss_stops: Estimate;
  /** Lost at the port: light spreads as it leaves the water, and two surfaces reflect. */
  port_loss_stops: Estimate;
  /** Lost in the filter on the lens; zero without one. */
  lens_filter_loss_stops: Estimate;
  /** Lost in the filters on the lamps; absent without lamps. */
  lamp_filter_loss_stops?: Estimate;
  /** All of the above that apply to daylight; absent without daylight. */
  total_loss_stops?: Estimate;
  /** Illuminance on the subject as a dome receptor in its place meters it, daylight and lamps together. */
  subject_illuminance_lx: Estimate;
  /** Exposure value at ISO 100 that a solid subject asks for (a dome receptor of ISO 2720), distance, port and filter included. */
  exposure_value_ev100: Estimate;
  /** The same for a flat card across the way to the camera, tilting with it, as a flat receptor of ISO 2720 meters it. */
  card_exposure_value_ev100: Estimate;
  /** What haze over the subject adds to the exposure value that the camera meters on it; absent without daylight. */
  haze_gain_stops?: Estimate;
  /** The same for what a meter in the housing averages over subject, sea floor and open water; absent without daylight. */
  scene_exposure_value_ev100?: Estimate;
  verdict: ExposureVerdict;
  /** Settings to use; the nearest that the camera has when the verdict is not `fits`. */
  iso: number;
  f_number: number;
  shutter_s: number;
  /** Light missing at the most sensitive settings; present when `too_dark`. */
  shortfall_stops?: Estimate;
  /** Light in excess at the least sensitive settings; present when `too_bright`. */
  excess_stops?: Estimate;
  /** Neutral density that would take the excess away; present when `too_bright`. */
  neutral_density_needed?: number;
  /** f-number that would take the excess away; present when `too_bright`. */
  f_number_needed?: number;
  /** Contrast against open water that is left at the camera, in percent: haze takes the rest. */
  contrast_left_percent: Estimate;
  /** Ways to pay for the loss, or to get rid of the excess; those that are enough alone first. */
  ways_to_pay: WayToPay[];
}

export type WayToPayKind =
  | "iso"
  | "aperture"
  | "shutter"
  | "lamp"
  | "higher_sun"
  | "shallower"
  | "filter_off"
  | "neutral_density";

export type WayToPay = Coded<WaysToPay> & {
  way: WayToPayKind;
  /** Light or sensitivity that it gains, in stops; negative where it takes light away. */
  gains_stops: number;
  /** Whether it is enough alone, within what camera and dive allow. */
  enough: boolean;
  /** The setting that it comes to. */
  iso?: number;
  f_number?: number;
  shutter_s?: number;
  neutral_density?: number;
  depth_m?: number;
  sun_elevation_deg?: number;
  /** Flux of a lamp with a beam of 100 degrees at 0.8 m that would do. */
  lamp_flux_lm?: number;
};
