/** The 24-patch chart of ISO 17321-1 as reflectances on the grid. Source: Ohta 1997. */
import { CHART_24 } from "../data/chart-24.js";
import type { Spectrum } from "../spectrum/grid.js";
import { onGrid } from "../spectrum/resample.js";

export interface Patch {
  name: string;
  reflectance: Spectrum;
}

const { wavelength_nm, ...patches } = CHART_24;

export const CHART_PATCHES: readonly Patch[] = Object.entries(patches).map(([name, values]) => ({
  name,
  reflectance: onGrid(wavelength_nm, values),
}));
