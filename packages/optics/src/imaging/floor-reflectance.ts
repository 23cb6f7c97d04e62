/**
 * What sea floors reflect, 0 to 1, on the grid: means of spectra measured over sand, coral and algae in the water and over seagrass
 * in air. Single floors differ: sand from about half of the mean to 0.5 (from memory), which the caller carries as uncertainty.
 */
import { BOTTOM_REFLECTANCE } from "../data/bottom-reflectance.js";
import type { Spectrum } from "../spectrum/grid.js";
import { onGrid } from "../spectrum/resample.js";

export const FLOOR_KINDS = ["sand", "coral", "crustose_coralline_algae", "macroalgae", "seagrass"] as const;
export type FloorKind = (typeof FLOOR_KINDS)[number];

export const floorReflectance = (kind: FloorKind): Spectrum =>
  onGrid(BOTTOM_REFLECTANCE.wavelength_nm, BOTTOM_REFLECTANCE[kind]);
