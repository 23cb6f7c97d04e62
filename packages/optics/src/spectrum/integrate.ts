import { GRID_SIZE, type Spectrum, STEP_NM } from "./grid.js";

/** Integral over the grid by the trapezoid rule: unit of the spectrum times nm. */
export function integrate(a: Spectrum): number {
  let sum = (a[0] + a[GRID_SIZE - 1]) / 2;
  for (let i = 1; i < GRID_SIZE - 1; i++) sum += a[i];
  return sum * STEP_NM;
}

/** Integral of the product of two spectra by the trapezoid rule. */
export function integrateProduct(a: Spectrum, b: Spectrum): number {
  let sum = (a[0] * b[0] + a[GRID_SIZE - 1] * b[GRID_SIZE - 1]) / 2;
  for (let i = 1; i < GRID_SIZE - 1; i++) sum += a[i] * b[i];
  return sum * STEP_NM;
}

/** Integral of the product of three spectra by the trapezoid rule. */
export function integrateTriple(a: Spectrum, b: Spectrum, c: Spectrum): number {
  const last = GRID_SIZE - 1;
  let sum = (a[0] * b[0] * c[0] + a[last] * b[last] * c[last]) / 2;
  for (let i = 1; i < last; i++) sum += a[i] * b[i] * c[i];
  return sum * STEP_NM;
}
