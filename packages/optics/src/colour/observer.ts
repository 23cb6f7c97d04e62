/** CIE 1931 standard observer and photometric quantities. Source: CIE 15; ISO/CIE 11664-1. */
import { CIE_1931_OBSERVER } from "../data/cie-1931-observer.js";
import type { Spectrum } from "../spectrum/grid.js";
import { integrateProduct } from "../spectrum/integrate.js";
import { onGrid } from "../spectrum/resample.js";

const { wavelength_nm, x_bar, y_bar, z_bar } = CIE_1931_OBSERVER;
export const X_BAR: Spectrum = onGrid(wavelength_nm, x_bar);
/** Equal to the luminous efficiency function V. */
export const Y_BAR: Spectrum = onGrid(wavelength_nm, y_bar);
export const Z_BAR: Spectrum = onGrid(wavelength_nm, z_bar);

/** Luminous efficacy at 540 THz, lm/W (definition of the candela). */
export const LUMINOUS_EFFICACY_lm_W = 683;

export type Xyz = readonly [X: number, Y: number, Z: number];

/** Tristimulus values of a spectrum, in the spectrum's unit times nm. */
export function xyzOf(spectrum: Spectrum): Xyz {
  return [
    integrateProduct(spectrum, X_BAR),
    integrateProduct(spectrum, Y_BAR),
    integrateProduct(spectrum, Z_BAR),
  ];
}

/** Illuminance in lux of a spectral irradiance in W m^-2 nm^-1. */
export function illuminance_lx(irradiance: Spectrum): number {
  return LUMINOUS_EFFICACY_lm_W * integrateProduct(irradiance, Y_BAR);
}

/** Chromaticity coordinates x, y. */
export function chromaticity([X, Y, Z]: Xyz): { x: number; y: number } {
  const sum = X + Y + Z;
  return { x: X / sum, y: Y / sum };
}
