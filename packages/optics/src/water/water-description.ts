/**
 * What every way of describing a water is turned into before it becomes a water: diffuse attenuation under the reference
 * sun, how sure it is, and the beam attenuation where that was seen.
 */
import type { Spectrum } from "../spectrum/grid.js";
import { VISIBILITY_INDEX } from "./visibility.js";
import { waterFromKd } from "./water-optics.js";

/** Where a spread comes from. */
export type WaterCause =
  | "water_type_resolution"
  | "clarity_reading"
  | "beam_to_diffuse"
  | "spectral_shape"
  | "hue_name"
  | "scattering_per_water"
  | "chlorophyll_relation"
  | "card_noise"
  | "kd_measurement";

export interface WaterSigma {
  cause: WaterCause;
  /** Standard deviation of the logarithm. */
  sigma_ln: number;
}

export interface WaterDescription {
  /** Diffuse attenuation of downwelling light under the reference sun. */
  kd_reference_per_m: Spectrum;
  /** Whose particles scatter: 0 those of the open sea, 1 of the coast. */
  coastalShare: number;
  /** Beam attenuation at 530 nm where the description fixes it, with the standard deviation of its logarithm. */
  beam_attenuation_530?: { value_per_m: number; sigma_ln: number };
  /** Independent causes of the spread of ln(Kd - Kw), one factor for all wavelengths. */
  remainder_sigmas: WaterSigma[];
  /** Independent causes of the spread of ln of particle scattering, given Kd. */
  scattering_sigmas: WaterSigma[];
}

/** Independent standard deviations combined: root of the sum of squares. */
export function combinedSigma(sigmas: readonly WaterSigma[]): number {
  return Math.sqrt(sigmas.reduce((sum, { sigma_ln }) => sum + sigma_ln * sigma_ln, 0));
}

/**
 * Spread of particle scattering about its relation with diffuse attenuation: a factor of two, which is how far measured scattering
 * and stations of equal attenuation lie apart (Williamson & Hollins 2022; Petzold 1972, SIO Ref. 72-78).
 */
export const SCATTERING_SIGMA_LN = 0.7;

/**
 * The factor on particle scattering with which a water of this Kd shows this beam attenuation at 530 nm; undefined where
 * none does: attenuation of the beam cannot fall below that of diffuse light along its path, mu0 Kd.
 */
export function scatteringScaleForBeam(
  { kd_reference_per_m, coastalShare }: Pick<WaterDescription, "kd_reference_per_m" | "coastalShare">,
  beam_530_per_m: number,
): number | undefined {
  const beamAt = (scatteringScale: number): number =>
    waterFromKd(kd_reference_per_m, { scatteringScale, coastalShare }).beam_attenuation_per_m[
      VISIBILITY_INDEX
    ];
  let low = 1e-3;
  let high = 1e3;
  if (!(beamAt(low) < beam_530_per_m) || beamAt(high) < beam_530_per_m) return undefined;
  for (let step = 0; step < 60; step++) {
    const middle = Math.sqrt(low * high);
    if (beamAt(middle) < beam_530_per_m) low = middle;
    else high = middle;
  }
  return Math.sqrt(low * high);
}
