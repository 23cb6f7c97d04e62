/** CIE illuminants as relative spectra, from CIE 15 (D55, D65), and the radiator that temperatures of light are named after. */
import { CIE_ILLUMINANTS } from "../data/cie-illuminants.js";
import { type Spectrum, spectrumFrom } from "../spectrum/grid.js";
import { onGrid } from "../spectrum/resample.js";

export type IlluminantName = Exclude<keyof typeof CIE_ILLUMINANTS, "wavelength_nm">;

/** A standard illuminant, relative power. */
export function illuminant(name: IlluminantName): Spectrum {
  return onGrid(CIE_ILLUMINANTS.wavelength_nm, CIE_ILLUMINANTS[name]);
}

/** Second radiation constant of the International Temperature Scale of 1990 as CIE 15 uses it, m K. */
const C2 = 1.4388e-2;

/** Planckian radiator, relative power, 1 at 560 nm. */
export function planckian(temperature_K: number): Spectrum {
  const at = (nm: number) => nm ** -5 / Math.expm1(C2 / (nm * 1e-9 * temperature_K));
  const norm = at(560);
  return spectrumFrom((nm) => at(nm) / norm);
}
