/**
 * Share of the downwelling irradiance that falls on a subject: level and facing up, upright before a camera that may look
 * anywhere (mean over all directions), or upright and facing the sun.
 *
 * Just below the surface: the refracted sun gives tan(w)/pi in the mean and tan(w) towards it, with w its angle from the
 * vertical in water; an even sky inside Snell's window gives 0.198 (exact for that geometry). With depth the light field
 * turns to its asymptotic form, L ~ exp(k cos), the smoothest field of a given mean cosine, which Gershun's law gives as
 * a/Kd. How fast it turns, 1 - exp(-0.42 sqrt(b z)), the factor 1.1 on the asymptotic form, and how the surplus towards the
 * sun fades, exp(-0.079 b z - 0.172 a z (1/cos w - 1)), are fitted to a photon-tracing simulation (beside this file, for
 * tests; phase function of Fournier & Jonasz 1999, backscattered share 0.018): b/a 0.3 to 8, sun 20 to 80 degrees high,
 * clear to overcast, down to three absorption lengths; root mean square about the simulation 6 % (mean) and 5 % (sun).
 * No published table of this ratio was found. Flat surface, deep homogeneous water: a bright bottom adds light from below.
 */
import { tabulated } from "../fast/tabulated.js";
import { FIRST_NM, GRID_SIZE, type Spectrum, STEP_NM } from "../spectrum/grid.js";

const RADIAN = Math.PI / 180;
/** Even radiance inside the window of half-angle asin(1/1.34). */
export const SKY_FRACTION = 0.198;
const CHANGE = 0.42;
const ASYMPTOTIC_FACTOR = 1.1;
const SURPLUS_LOST_PER_SCATTERING_DEPTH = 0.079;
const SURPLUS_LOST_PER_EXTRA_PATH = 0.172;
/** Deviation of the model from the simulation, of ln. */
const MODEL_SIGMA_LN = 0.07;
/** Of ln, for a subject that does not face the sun exactly. From memory: some 15 degrees off. */
const POSE_SIGMA_LN = 0.1;
/** 90th percentile of the standard normal distribution. */
const Z90 = 1.2816;
/** Surplus at the direction that a tenth of all directions face more closely: cosine of 18 degrees. */
const TENTH_TOWARDS_SUN = 0.95;
/** What a plane facing away from the sun gets below the mean, per surplus towards the sun (simulation). */
const SHORTFALL_AWAY = 0.5;
/**
 * Least share of the mean that such a plane is taken to get. The simulated seas and every Jerlov water keep 0.09 or more; in a
 * made-up water the straight line through the simulation would lead below no light at all.
 */
const LEAST_SHARE_AWAY = 0.05;
const SPREAD_AT = (550 - FIRST_NM) / STEP_NM;

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

const LEAST_MEAN_COSINE = 0.05;
const GREATEST_MEAN_COSINE = 0.95;
const held = (meanCosine: number): number =>
  Math.min(GREATEST_MEAN_COSINE, Math.max(LEAST_MEAN_COSINE, meanCosine));

/** Upright over downwelling irradiance, mean over directions, in the asymptotic field of mean cosine `meanCosine` (held to 0.05 to 0.95). */
export function asymptoticUprightFraction(meanCosine: number): number {
  const k = concentration(held(meanCosine));
  const upright = (2 * Math.PI * besselI1(k)) / k;
  const downwelling = 2 * Math.PI * (Math.exp(k) * (1 / k - 1 / (k * k)) + 1 / (k * k));
  return upright / downwelling;
}

/** The same from a table, for a range of wavelengths and depths after another: within 1e-8. */
const fractionOfHeld = tabulated(asymptoticUprightFraction, LEAST_MEAN_COSINE, GREATEST_MEAN_COSINE, 1200);
export const asymptoticUprightFractionFast = (meanCosine: number): number => fractionOfHeld(held(meanCosine));

/** Where the lit side of the subject looks. `camera`: upright, in any direction. */
export type SubjectFacing = "up" | "camera" | "sun";

export interface UprightGeometry {
  /** Sun's angle from the vertical in water. */
  sunAngleInWater_deg: number;
  /** Share of the direct beam in the downwelling light just below the surface, 0 to 1. */
  directShare: number;
  depth_m: number;
  /** `camera` when left out. */
  subjectFacing?: SubjectFacing;
}

interface UprightLight {
  mean: number;
  /** What a plane facing the sun gets above the mean. */
  surplus: number;
}

function uprightLight(geometry: UprightGeometry, a: number, b: number, kd: number): UprightLight {
  const { sunAngleInWater_deg, directShare, depth_m } = geometry;
  const tangent = Math.tan(sunAngleInWater_deg * RADIAN);
  const near = (directShare * tangent) / Math.PI + (1 - directShare) * SKY_FRACTION;
  const far = ASYMPTOTIC_FACTOR * asymptoticUprightFractionFast(a / kd);
  const weight = 1 - Math.exp(-CHANGE * Math.sqrt(b * depth_m));
  const extraPath = 1 / Math.cos(sunAngleInWater_deg * RADIAN) - 1;
  const lost =
    depth_m * (SURPLUS_LOST_PER_SCATTERING_DEPTH * b + SURPLUS_LOST_PER_EXTRA_PATH * a * extraPath);
  return {
    mean: (1 - weight) * near + weight * far,
    surplus: directShare * tangent * (1 - 1 / Math.PI) * Math.exp(-lost),
  };
}

/** Irradiance on the subject over downwelling irradiance, per wavelength; 1 for a subject that faces up. */
export function uprightFraction(
  geometry: UprightGeometry,
  absorption_per_m: Spectrum,
  scattering_per_m: Spectrum,
  kd_per_m: Spectrum,
): Spectrum {
  const out = new Float64Array(GRID_SIZE).fill(1);
  if (geometry.subjectFacing === "up") return out;
  const towardsSun = geometry.subjectFacing === "sun" ? 1 : 0;
  for (let i = 0; i < GRID_SIZE; i++) {
    const { mean, surplus } = uprightLight(geometry, absorption_per_m[i], scattering_per_m[i], kd_per_m[i]);
    out[i] = mean + towardsSun * surplus;
  }
  return out;
}

/** How far the true share lies from the fraction, as ln: `up` from it to the 90th percentile, `down` to the 10th. */
export interface UprightSpread {
  up: number;
  down: number;
}

/**
 * Spread of that fraction. Before a camera most of it is that nobody said which way the camera looks: a tenth of the directions
 * face the sun within 18 degrees, and a tenth face away from it and miss about half as much as the others gain.
 */
export function uprightSpreadLn(
  geometry: UprightGeometry,
  absorption_per_m: Spectrum,
  scattering_per_m: Spectrum,
  kd_per_m: Spectrum,
): UprightSpread {
  if (geometry.subjectFacing === "up") return { up: 0, down: 0 };
  const model = Z90 * MODEL_SIGMA_LN;
  if (geometry.subjectFacing === "sun") {
    const pose = Z90 * POSE_SIGMA_LN;
    return { up: Math.hypot(model, pose), down: Math.hypot(model, pose) };
  }
  const i = SPREAD_AT;
  const { mean, surplus } = uprightLight(geometry, absorption_per_m[i], scattering_per_m[i], kd_per_m[i]);
  const towards = mean + TENTH_TOWARDS_SUN * surplus;
  const away = Math.max(mean - SHORTFALL_AWAY * surplus, LEAST_SHARE_AWAY * mean);
  return {
    up: Math.hypot(model, Math.log(towards / mean)),
    down: Math.hypot(model, Math.log(mean / away)),
  };
}
