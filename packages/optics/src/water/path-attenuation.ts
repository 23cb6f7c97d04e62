import { GRID_SIZE, type Spectrum } from "../spectrum/grid.js";
import type { WaterOptics } from "./water-optics.js";

/**
 * Attenuation of light on a short path from a lamp or to a lens, 1/m: between absorption and beam attenuation.
 *
 * Scattering in the sea is mostly forward, so part of what a narrow beam loses still lights the subject, or reaches the lens
 * as a soft halo. `scatterLost` is the share of scattering that counts as lost: 0.5, from memory, anywhere from 0.1 to 1.
 */
export const SCATTER_LOST = 0.5;

export function pathAttenuation(water: WaterOptics, scatterLost = SCATTER_LOST): Spectrum {
  const out = new Float64Array(GRID_SIZE);
  for (let i = 0; i < GRID_SIZE; i++) {
    out[i] = water.absorption_per_m[i] + scatterLost * water.scattering_per_m[i];
  }
  return out;
}
