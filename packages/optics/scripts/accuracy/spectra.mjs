import { WAVELENGTHS_NM } from "#model/spectrum/grid";
import { interpolate } from "#model/spectrum/resample";

const GRID_NM = Array.from(WAVELENGTHS_NM);

/** A spectrum of the model at any wavelength on or between the grid's. */
export const valueAt = (spectrum, nm) => interpolate(GRID_NM, Array.from(spectrum), nm);

/** A spectrum of the model as points of a line, from and to a wavelength. */
export const lineOf = (spectrum, from = 380, to = 780) =>
  GRID_NM.map((nm, i) => [nm, spectrum[i]]).filter(([nm]) => nm >= from && nm <= to);

export const WAVELENGTH_AXIS = { domain: [380, 710], ticks: [400, 450, 500, 550, 600, 650, 700] };
/** For narrow panels. */
export const SPARSE_WAVELENGTH_AXIS = { domain: [380, 710], ticks: [400, 500, 600, 700] };
