/**
 * Share of the downwelling irradiance that falls on an upright plane where it is known in closed form: under an even sky just below
 * the surface, and deep down, where the light field turns to its asymptotic form L ~ exp(k cos), the smoothest field of a given
 * mean cosine, which Gershun's law gives as a/Kd. What lies between is fitted in light-field.ts.
 */
import { tabulated } from "../fast/tabulated.js";

/** Even radiance inside the window of half-angle asin(1/1.34). */
export const SKY_FRACTION = 0.198;

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

/** Where the lit side of the subject looks: up, to the camera, or to the sun. */
export type SubjectFacing = "up" | "camera" | "sun";
