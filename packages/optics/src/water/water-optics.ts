import { GRID_SIZE, type Spectrum } from "../spectrum/grid.js";
import { kirkAbsorption, kirkKdRatio } from "./kirk-1984.js";
import { PURE_WATER_ABSORPTION_PER_M, PURE_WATER_KD_PER_M } from "./pure-water.js";
import { scatteringFromKd } from "./scattering-from-kd.js";

/** What every description of a water ends in. All spectra in 1/m. */
export interface WaterOptics {
  /** Absorption. */
  absorption_per_m: Spectrum;
  /** Scattering. */
  scattering_per_m: Spectrum;
  /** Beam attenuation, absorption plus scattering. */
  beam_attenuation_per_m: Spectrum;
  /** Diffuse attenuation of downwelling light for the reference sun of the tables. */
  kd_reference_per_m: Spectrum;
}

/**
 * Cosine of the effective light path for which tables of diffuse attenuation are taken to hold: a high sun (zenith 30 to
 * 40 degrees) with some sky. From memory; tables state "high sun" only.
 */
export const REFERENCE_MU0 = 0.9;

export interface WaterSpread {
  /** Multiplies the part of Kd above pure water. */
  kdRemainderScale?: number;
  /** Multiplies particle scattering. */
  scatteringScale?: number;
  /** Whose particles scatter: 0 those of the open sea, 1 of the coast; by the shape of the attenuation where it is left out. */
  coastalShare?: number;
  /** Path cosine for which Kd is given. */
  referenceMu0?: number;
}

/** A water to be written to. */
export const emptyWater = (): WaterOptics => ({
  absorption_per_m: new Float64Array(GRID_SIZE),
  scattering_per_m: new Float64Array(GRID_SIZE),
  beam_attenuation_per_m: new Float64Array(GRID_SIZE),
  kd_reference_per_m: new Float64Array(GRID_SIZE),
});

/**
 * The water that shows this diffuse attenuation under the reference sun. Scattering follows from Kd (`scatteringFromKd`)
 * and absorption from both by inverting Kirk 1984. Absorption never falls below pure water's: where the pair would ask for
 * less, scattering is what it is and Kd is left as given.
 * @param out written and returned; made where it is left out.
 */
export function waterFromKd(
  kd_per_m: Spectrum,
  { kdRemainderScale = 1, scatteringScale = 1, coastalShare, referenceMu0 = REFERENCE_MU0 }: WaterSpread = {},
  out: WaterOptics = emptyWater(),
): WaterOptics {
  const { absorption_per_m: a, beam_attenuation_per_m: c, kd_reference_per_m: kd } = out;
  const b = scatteringFromKd(kd_per_m, scatteringScale, coastalShare, out.scattering_per_m);
  for (let i = 0; i < GRID_SIZE; i++) {
    const pure = PURE_WATER_KD_PER_M[i];
    const remainder = kd_per_m[i] - pure;
    const scaled = pure + remainder * (remainder > 0 ? kdRemainderScale : 1);
    kd[i] = Math.max(PURE_WATER_ABSORPTION_PER_M[i], scaled);
    a[i] = Math.max(PURE_WATER_ABSORPTION_PER_M[i], kirkAbsorption(kd[i], b[i], referenceMu0));
    c[i] = a[i] + b[i];
  }
  return out;
}

/**
 * Diffuse attenuation under a sun whose effective path cosine is `mu0`, 1/m: the table's value times the ratio that
 * Kirk 1984 gives between this sun and the reference one. A mean over the euphotic zone; the first metres see a little
 * more of the difference, great depths less.
 * @param referenceMu0 path cosine for which the water was described
 * @param out written and returned; made where it is left out.
 */
export function kdUnderSun(
  { absorption_per_m: a, scattering_per_m: b, kd_reference_per_m: kd }: WaterOptics,
  mu0: number,
  referenceMu0: number = REFERENCE_MU0,
  out: Spectrum = new Float64Array(GRID_SIZE),
): Spectrum {
  for (let i = 0; i < GRID_SIZE; i++) {
    const ratio = kirkKdRatio(a[i], b[i], mu0, referenceMu0);
    out[i] = Math.max(PURE_WATER_ABSORPTION_PER_M[i], kd[i] * ratio);
  }
  return out;
}
