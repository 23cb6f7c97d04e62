/**
 * Share of the downwelling irradiance that falls on an upright surface, mean over all directions that it may face.
 *
 * Just below the surface: the refracted sun gives tan(w)/pi, with w its angle from the vertical in water; an even sky inside
 * Snell's window gives 0.198 (exact for that geometry). With depth the light field turns to its asymptotic form, taken as
 * L ~ exp(k cos), the smoothest field of a given mean cosine, whose mean cosine Gershun's law gives as a/Kd. Measured fields
 * give about 0.26 for moderately scattering lake water (radiances of Tyler 1960 as remembered), this form 0.24. The rate of the
 * change with scattering depth, 0.2 b z, is an estimate from the same measurements.
 */
import { GRID_SIZE, type Spectrum } from "../spectrum/grid.js";

const RADIAN = Math.PI / 180;
/** Even radiance inside the window of half-angle asin(1/1.34). */
export const SKY_FRACTION = 0.198;
const CHANGE_PER_SCATTERING_DEPTH = 0.2;

/** Concentration k of L ~ exp(k cos) with mean cosine m, by the usual rational approximation refined with Newton steps. */
function concentration(m: number): number {
  let k = (m * (3 - m * m)) / (1 - m * m);
  for (let i = 0; i < 4; i++) {
    const tanh = Math.tanh(k);
    const value = 1 / tanh - 1 / k - m;
    const slope = 1 - 1 / (tanh * tanh) + 1 / (k * k);
    k -= value / slope;
  }
  return k;
}

/** Modified Bessel function of the first kind and order one, by its power series (k up to about 30). */
function besselI1(k: number): number {
  const quarter = (k * k) / 4;
  let term = k / 2;
  let sum = term;
  for (let n = 1; n < 60; n++) {
    term *= quarter / (n * (n + 1));
    sum += term;
    if (term < sum * 1e-12) break;
  }
  return sum;
}

/** Upright over downwelling irradiance in the asymptotic field of mean cosine `meanCosine` (held to 0.05 to 0.95). */
export function asymptoticUprightFraction(meanCosine: number): number {
  const k = concentration(Math.min(0.95, Math.max(0.05, meanCosine)));
  const upright = (2 * Math.PI * besselI1(k)) / k;
  const downwelling = 2 * Math.PI * (Math.exp(k) * (1 / k - 1 / (k * k)) + 1 / (k * k));
  return upright / downwelling;
}

export interface UprightGeometry {
  /** Sun's angle from the vertical in water. */
  sunAngleInWater_deg: number;
  /** Share of the direct beam in the downwelling light just below the surface, 0 to 1. */
  directShare: number;
  depth_m: number;
}

export function uprightFraction(
  geometry: UprightGeometry,
  absorption_per_m: Spectrum,
  scattering_per_m: Spectrum,
  kd_per_m: Spectrum,
): Spectrum {
  const sun = Math.tan(geometry.sunAngleInWater_deg * RADIAN) / Math.PI;
  const near = geometry.directShare * sun + (1 - geometry.directShare) * SKY_FRACTION;
  const out = new Float64Array(GRID_SIZE);
  for (let i = 0; i < GRID_SIZE; i++) {
    const far = asymptoticUprightFraction(absorption_per_m[i] / kd_per_m[i]);
    const weight = 1 - Math.exp(-CHANGE_PER_SCATTERING_DEPTH * scattering_per_m[i] * geometry.depth_m);
    out[i] = (1 - weight) * near + weight * far;
  }
  return out;
}
