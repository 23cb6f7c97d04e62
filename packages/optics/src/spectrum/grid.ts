/**
 * The one wavelength grid on which every spectrum of the model lies: 380 to 780 nm in steps of 5 nm.
 * CIE 15 allows 5 nm for colorimetry; no sensor curve in use reaches outside it.
 */
export const FIRST_NM = 380;
export const LAST_NM = 780;
export const STEP_NM = 5;
export const GRID_SIZE = (LAST_NM - FIRST_NM) / STEP_NM + 1;

/** A quantity per wavelength, on the grid. Its unit is in the name of whatever holds it. */
export type Spectrum = Float64Array;

/** The wavelengths of the grid, nm. */
export const WAVELENGTHS_NM: Spectrum = Float64Array.from(
  { length: GRID_SIZE },
  (_, i) => FIRST_NM + i * STEP_NM,
);

/** A spectrum computed wavelength by wavelength. */
export function spectrumFrom(valueAt: (wavelengthNm: number, index: number) => number): Spectrum {
  const out = new Float64Array(GRID_SIZE);
  for (let i = 0; i < GRID_SIZE; i++) out[i] = valueAt(WAVELENGTHS_NM[i], i);
  return out;
}
