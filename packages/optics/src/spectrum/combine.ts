import { expNegative } from "../fast/exp-negative.js";
import { GRID_SIZE, type Spectrum } from "./grid.js";

/** Product of two spectra, wavelength by wavelength. */
export function multiply(a: Spectrum, b: Spectrum): Spectrum {
  const out = new Float64Array(GRID_SIZE);
  for (let i = 0; i < GRID_SIZE; i++) out[i] = a[i] * b[i];
  return out;
}

/** A spectrum as a plain list; `Array.from` takes ten times as long. */
export function listOf(a: Spectrum): number[] {
  const out: number[] = new Array(GRID_SIZE);
  for (let i = 0; i < GRID_SIZE; i++) out[i] = a[i];
  return out;
}

/** Sum of two spectra, wavelength by wavelength. */
export function add(a: Spectrum, b: Spectrum): Spectrum {
  const out = new Float64Array(GRID_SIZE);
  for (let i = 0; i < GRID_SIZE; i++) out[i] = a[i] + b[i];
  return out;
}

/** A spectrum times a number. */
export function scale(a: Spectrum, factor: number): Spectrum {
  const out = new Float64Array(GRID_SIZE);
  for (let i = 0; i < GRID_SIZE; i++) out[i] = a[i] * factor;
  return out;
}

/** exp(-attenuation * length): what a path of `length_m` lets through at `attenuation_per_m`. */
export function pathTransmittance(attenuation_per_m: Spectrum, length_m: number): Spectrum {
  const out = new Float64Array(GRID_SIZE);
  for (let i = 0; i < GRID_SIZE; i++) out[i] = expNegative(attenuation_per_m[i] * length_m);
  return out;
}
