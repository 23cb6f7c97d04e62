import { expNegative, type Spectrum } from "@sunfathom/optics";
import { valueAt } from "../lists/non-empty.js";
import { band } from "./band.js";

const RED_BAND: Spectrum = band(600, 700);
const FIRST = RED_BAND.findIndex((weight) => weight > 0);
const AFTER_LAST = FIRST + RED_BAND.filter((weight) => weight > 0).length;
const NEWTON_STEPS = 24;
const CLOSE_ENOUGH_M = 1e-6;

/**
 * Depth at which what a light has of 600 to 700 nm just below the surface is down to a share. The logarithm of a sum of
 * exponentials is convex and falling, so Newton's method from any shallower depth closes in without overshooting.
 *
 * @param from_m such a shallower depth, where one is known.
 */
export function redDownTo_m(light: Spectrum, kd_per_m: Spectrum, share: number, from_m = 0): number {
  let depth_m = from_m;
  let reference = 0;
  for (let i = FIRST; i < AFTER_LAST; i++) reference += valueAt(light, i) * valueAt(RED_BAND, i);
  for (let step = 0; step < NEWTON_STEPS; step++) {
    let left = 0;
    let fading = 0;
    for (let i = FIRST; i < AFTER_LAST; i++) {
      const kd = valueAt(kd_per_m, i);
      const value = valueAt(light, i) * valueAt(RED_BAND, i) * expNegative(kd * depth_m);
      left += value;
      fading += value * kd;
    }
    const change = (Math.log(left / reference / share) * left) / fading;
    depth_m += change;
    if (Math.abs(change) < CLOSE_ENOUGH_M) break;
  }
  return depth_m;
}
