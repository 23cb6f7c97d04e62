/**
 * What a matt sea floor adds to the light above it.
 *
 * E_u(z) = E_d(z) [R + (A - R) exp(-(K_d + K_B)(H - z))], with R the reflectance of deep water, A that of the floor and H its
 * depth: Maritorena, Morel & Gentili 1994, Diffuse reflectance of oceanic shallow waters, Limnology and Oceanography 39, 1689.
 * Light from the floor is more slant than light from above: K_B = 1.8 (a + b_b) here, fitted by scripts/fit-sea-floor.mjs to the
 * photon tracing beside this file, where twice K_d would be the first approximation. The surface sends a part of it
 * down again and so raises all light from above: by 1/(1 - 0.4 R'), R' what reaches the surface, fitted likewise.
 */
import { type Coefficients, MOLECULE_BACKSCATTER, PARTICLE_BACKSCATTER } from "./light-field.js";

export interface FloorConstants {
  slant: number;
  sentDown: number;
}

/** Printed by scripts/fit-sea-floor.mjs. */
export const FLOOR_CONSTANTS: FloorConstants = { slant: 1.8, sentDown: 0.4 };

export interface FloorLight {
  /** Upwelling light from the floor at this depth over the downwelling light there; negative over a floor darker than the water. */
  upwelling: number;
  /** Downwelling light with the floor over that without. */
  gain: number;
}

/**
 * @param reflectance of the floor, 0 to 1
 * @param above_m height over the floor, from 0
 * @param floorDepth_m from the surface to the floor
 * @param deepReflectance reflectance of deep water, as `lightField` gives it
 */
export function floorLight(
  reflectance: number,
  {
    above_m,
    floorDepth_m,
    deepReflectance,
  }: { above_m: number; floorDepth_m: number; deepReflectance: number },
  { absorption_per_m, particles_per_m, molecules_per_m, kd_per_m }: Coefficients,
  k: FloorConstants = FLOOR_CONSTANTS,
): FloorLight {
  const backscatter = PARTICLE_BACKSCATTER * particles_per_m + MOLECULE_BACKSCATTER * molecules_per_m;
  const lost_per_m = kd_per_m + k.slant * (absorption_per_m + backscatter);
  const surplus = reflectance - deepReflectance;
  return {
    upwelling: surplus * Math.exp(-lost_per_m * above_m),
    gain: 1 / (1 - k.sentDown * surplus * Math.exp(-lost_per_m * floorDepth_m)),
  };
}
