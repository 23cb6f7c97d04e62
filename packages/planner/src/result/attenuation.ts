import type { AttenuationReasons } from "../codes/attenuation.js";
import type { LightReasons } from "../codes/light.js";
import type { NonEmpty } from "../lists/non-empty.js";
import type { AnswerParts, Estimate } from "./common.js";

export interface AttenuationAnswer extends AnswerParts<AttenuationReasons & LightReasons> {
  /** Wavelengths of every `spectrum_left` in this answer. */
  wavelengths_nm: number[];
  depths: NonEmpty<DepthLight>;
  /** How well a water fits the card samples; present where they describe the water. */
  card_fit?: CardFitFigures;
  /** Depth at which light above 600 nm is down to a tenth of what it is just below the surface. */
  red_to_tenth_depth_m: Estimate;
  /** Depth at which it is down to a hundredth. */
  red_to_hundredth_depth_m: Estimate;
}

/** Attenuation of each channel's light between the shallowest and the deepest card, with standard errors. */
export interface CardFitFigures {
  /** Absent where exposures are unknown: then only the differences between channels are claimed. */
  red_kd_per_m?: number;
  red_kd_standard_error_per_m?: number;
  green_kd_per_m?: number;
  green_kd_standard_error_per_m?: number;
  blue_kd_per_m?: number;
  blue_kd_standard_error_per_m?: number;
  red_minus_green_kd_per_m: number;
  red_minus_green_kd_standard_error_per_m: number;
  blue_minus_green_kd_per_m: number;
  blue_minus_green_kd_standard_error_per_m: number;
  /** Root mean square of measured over fitted light, in stops. */
  rms_residual_stops: number;
  /** The same for each card in the order given: red, green and blue. */
  residuals: CardResidual[];
}

export interface CardResidual {
  depth_m: number;
  red_stops: number;
  green_stops: number;
  blue_stops: number;
}

/** The light that falls on a horizontal surface at one depth. */
export interface DepthLight {
  depth_m: number;
  /** Loss from just below the surface. */
  red_loss_stops: Estimate;
  green_loss_stops: Estimate;
  blue_loss_stops: Estimate;
  photopic_loss_stops: Estimate;
  par_loss_stops: Estimate;
  red_left_percent: Estimate;
  green_left_percent: Estimate;
  blue_left_percent: Estimate;
  photopic_left_percent: Estimate;
  par_left_percent: Estimate;
  /** Share of the light just below the surface that is left, per wavelength, 0 to 1. */
  spectrum_left: number[];
  /** CIE 1931 chromaticity of the light. */
  x: number;
  y: number;
  /** Distance from the Planckian locus in CIE 1960 uv, positive above it. */
  duv: number;
  /** Correlated colour temperature; absent where |duv| is above 0.05 and it has no meaning. */
  cct_K?: number;
  /** Illuminance on a horizontal surface; absent without daylight. */
  illuminance_lx?: Estimate;
}
