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

/** Integrals of the products of one spectrum with three others: in one pass, as it is asked very often. */
export function integrateThree(
  a: Spectrum,
  [b, c, d]: readonly [Spectrum, Spectrum, Spectrum],
): [number, number, number] {
  const last = GRID_SIZE - 1;
  let inB = (a[0] * b[0] + a[last] * b[last]) / 2;
  let inC = (a[0] * c[0] + a[last] * c[last]) / 2;
  let inD = (a[0] * d[0] + a[last] * d[last]) / 2;
  for (let i = 1; i < last; i++) {
    const value = a[i];
    inB += value * b[i];
    inC += value * c[i];
    inD += value * d[i];
  }
  return [inB * STEP_NM, inC * STEP_NM, inD * STEP_NM];
}
