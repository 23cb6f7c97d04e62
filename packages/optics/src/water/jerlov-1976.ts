/**
 * Diffuse attenuation of the ten optical water types, edition of 1976 (the edition of 1968 differs by 4 to 15 %).
 * Source: Jerlov 1976, Marine Optics, 2nd edition, Elsevier, Table XXVII.
 */
import { JERLOV_1976 } from "../data/jerlov-1976.js";
import type { Spectrum } from "../spectrum/grid.js";
import { kdFromTable } from "./kd-table.js";

export type JerlovType = Exclude<keyof typeof JERLOV_1976, "wavelength_nm">;

/** The types from clearest ocean to most turbid coast. */
export const JERLOV_TYPES = Object.keys(JERLOV_1976).filter(
  (key): key is JerlovType => key !== "wavelength_nm",
);

/** Diffuse attenuation on the grid, 1/m. */
export function jerlovKd(type: JerlovType): Spectrum {
  return kdFromTable(JERLOV_1976.wavelength_nm, JERLOV_1976[type]);
}
