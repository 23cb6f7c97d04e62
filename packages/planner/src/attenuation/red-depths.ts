import { expNegative, type Spectrum } from "@sunfathom/optics";
import { band } from "./band.js";

const RED_BAND: Spectrum = band(600, 700);
const FIRST = RED_BAND.findIndex((weight) => weight > 0);
const AFTER_LAST = FIRST + RED_BAND.filter((weight) => weight > 0).length;
const NEWTON_STEPS = 24;
const CLOSE_ENOUGH_M = 1e-6;

/**
 * Depths at which what a light has of 600 to 700 nm just below the surface is down to each of `shares`, which fall. The
 * logarithm of a sum of exponentials is convex and falling, so Newton's method from any shallower depth closes in without
 * overshooting: from the surface for the first, from the one before for each other.
 */
export function redDownTo_m(light: Spectrum, kd_per_m: Spectrum, shares: readonly number[]): number[] {
  let depth_m = 0;
  let reference = 0;
  for (let i = FIRST; i < AFTER_LAST; i++) reference += light[i] * RED_BAND[i];
  return shares.map((share) => {
    for (let step = 0; step < NEWTON_STEPS; step++) {
      let left = 0;
      let fading = 0;
      for (let i = FIRST; i < AFTER_LAST; i++) {
        const value = light[i] * RED_BAND[i] * expNegative(kd_per_m[i] * depth_m);
        left += value;
        fading += value * kd_per_m[i];
      }
      const change = (Math.log(left / reference / share) * left) / fading;
      depth_m += change;
      if (Math.abs(change) < CLOSE_ENOUGH_M) break;
    }
    return depth_m;
  });
}
