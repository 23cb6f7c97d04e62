/** The 24-patch chart of ISO 17321-1 as reflectances on the grid. Source: Ohta 1997. */
import { CHART_24 } from "../data/chart-24.js";
import type { Spectrum } from "../spectrum/grid.js";
import { onGrid } from "../spectrum/resample.js";

export interface Patch {
  reflectance: Spectrum;
}

/** In the order of the table. */
export const CHART_PATCHES: readonly Patch[] = CHART_24.reflectances.map((values) => ({
  reflectance: onGrid(CHART_24.wavelength_nm, values),
}));
