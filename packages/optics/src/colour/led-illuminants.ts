/** CIE LED illuminants as relative spectra. Source: CIE 15:2018 Table 12. */
import { CIE_LED_ILLUMINANTS } from "../data/cie-led-illuminants.js";
import type { Spectrum } from "../spectrum/grid.js";
import { onGrid } from "../spectrum/resample.js";

export type LedName = Exclude<keyof typeof CIE_LED_ILLUMINANTS, "wavelength_nm">;
const ledNames = (): LedName[] =>
  Object.keys(CIE_LED_ILLUMINANTS).filter((k): k is LedName => k !== "wavelength_nm");
export const LED_NAMES = /* @__PURE__ */ ledNames();

/** A CIE LED illuminant, relative power. */
export function ledIlluminant(name: LedName): Spectrum {
  return onGrid(CIE_LED_ILLUMINANTS.wavelength_nm, CIE_LED_ILLUMINANTS[name]);
}
