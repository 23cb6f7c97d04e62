import {
  FIRST_NM,
  illuminant,
  integrateProduct,
  multiply,
  pathTransmittance,
  type Spectrum,
  STEP_NM,
  WAVELENGTHS_NM,
  Y_BAR,
} from "@sunfathom/optics";
import { sensorProfile } from "../camera/sensor-profile.js";
import type { Underwater } from "../light/underwater.js";

const indexOf = (nm: number): number => (nm - FIRST_NM) / STEP_NM;
/** 1 inside a band and a half at its ends, as the trapezoid rule has it. */
const band = (from_nm: number, to_nm: number): Spectrum =>
  WAVELENGTHS_NM.map((nm, i) =>
    i === indexOf(from_nm) || i === indexOf(to_nm) ? 0.5 : nm > from_nm && nm < to_nm ? 1 : 0,
  );

/** Photons from 400 to 700 nm per energy, in any unit: losses are ratios. */
const QUANTA: Spectrum = multiply(band(400, 700), WAVELENGTHS_NM);
const RED_BAND: Spectrum = band(600, 700);
const D55: Spectrum = illuminant("D55");

/** Light just below the surface; an even sky of 5500 K where there is no daylight, for losses only. */
export const topLight = (world: Underwater): Spectrum => world.daylight?.below.downwelling ?? D55;

/** Weights by which red, green and blue channel, eye and leaf see light, in that order. */
export const SEEN_COUNT = 5;
const weightsOf = (world: Underwater): readonly Spectrum[] => {
  const { red, green, blue } = sensorProfile(world.nuisance.crosstalkSd).sensor;
  return [red, green, blue, Y_BAR, QUANTA];
};

/** Loss from just below the surface, in stops: one row a depth, one number for each of those that see. */
export function lossesAt(world: Underwater, depths_m: readonly number[]): number[][] {
  const top = topLight(world);
  // Each observer's view of the light at the surface: only the water's transmittance changes with depth.
  const views = weightsOf(world).map((weights) => multiply(top, weights));
  const before = views.map((view) => integrateProduct(view, ALL));
  return depths_m.map((depth_m) => {
    const left = pathTransmittance(world.kd_per_m, depth_m);
    return views.map((view, k) => Math.log2(before[k] / integrateProduct(view, left)));
  });
}

const ALL: Spectrum = WAVELENGTHS_NM.map(() => 1);
const NEWTON_STEPS = 12;

/**
 * Depth at which light of 600 to 700 nm is down to a share of what it is below the surface. The logarithm of a sum of
 * exponentials is convex and falling, so Newton's method from the surface closes in from above without overshooting.
 */
export function redDownTo_m(world: Underwater, share: number): number {
  const light = multiply(topLight(world), RED_BAND);
  const reference = integrateProduct(light, ALL);
  const fading = multiply(light, world.kd_per_m);
  let depth_m = 0;
  for (let step = 0; step < NEWTON_STEPS; step++) {
    const left = pathTransmittance(world.kd_per_m, depth_m);
    const value = integrateProduct(light, left);
    const change = (Math.log(value / reference / share) * value) / integrateProduct(fading, left);
    depth_m += change;
    if (Math.abs(change) < 1e-6) break;
  }
  return depth_m;
}
