import { GRID_SIZE, type Spectrum } from "../spectrum/grid.js";

/**
 * Irradiance of a lamp on a surface that faces it, W m^-2 nm^-1: spectrum per lumen times intensity over distance squared,
 * times what the water lets through. Inverse square: exact for a distance beyond five lamp diameters.
 */
export function lampIrradiance(
  spectrumPerLumen: Spectrum,
  intensity_cd: number,
  distance_m: number,
  attenuation_per_m: Spectrum,
): Spectrum {
  const geometry = intensity_cd / (distance_m * distance_m);
  const out = new Float64Array(GRID_SIZE);
  for (let i = 0; i < GRID_SIZE; i++) {
    out[i] = spectrumPerLumen[i] * geometry * Math.exp(-attenuation_per_m[i] * distance_m);
  }
  return out;
}
