import { tenTo } from "../fast/powers.js";
import { GRID_SIZE, type Spectrum, spectrumFrom } from "../spectrum/grid.js";
import { onGrid } from "../spectrum/resample.js";
import { densityShape, type FilterKind, type FilterShape } from "./filter-kinds.js";

/** Density of an uncoated plate outside its band: two surfaces of about 4 % each (Fresnel, n = 1.5). */
export const BASE_DENSITY = 0.035;
/** Share that passes inside the band however dense the dye: an assumption. */
export const LEAKAGE = 0.003;

/**
 * Transmittance of a filter of a kind and nominal density: 10^-base (leakage + (1 - leakage) 10^(-density shape)), 0 to 1.
 * `density` is the peak density above base in the kind's band; 0 is a clear plate.
 */
export const filterTransmittance = (kind: FilterKind, density: number, shape: FilterShape = {}): Spectrum =>
  bandTransmittance(densityShape(kind, shape), density);

/** The same for a band that is known already, as for one kind at many densities. @param band density per unit of nominal density */
export function bandTransmittance(band: Spectrum, density: number): Spectrum {
  const base = 10 ** -BASE_DENSITY;
  return spectrumFrom((_, i) => base * (LEAKAGE + (1 - LEAKAGE) * tenTo(-density * band[i])));
}

/** A measured curve on the grid; beyond its ends the end values hold. */
export function measuredTransmittance(
  wavelengths_nm: readonly number[],
  transmittance: readonly number[],
): Spectrum {
  return onGrid(wavelengths_nm, transmittance);
}

/** No filter at all. */
export const CLEAR: Spectrum = new Float64Array(GRID_SIZE).fill(1);
