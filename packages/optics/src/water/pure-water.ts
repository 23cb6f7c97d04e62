/**
 * Optical properties of pure sea water on the grid, 1/m.
 * Absorption: Pope & Fry 1997 to 727.5 nm, beyond it the Water Optical Properties Processor v3 (fresh water, 20 °C).
 * Scattering: Zhang, Hu & He 2009 (35 psu, 20 °C).
 */
import { POPE_FRY_1997 } from "../data/pope-fry-1997.js";
import { WOPP_V3 } from "../data/wopp-v3.js";
import { ZHANG_HU_HE_2009 } from "../data/zhang-hu-he-2009.js";
import { type Spectrum, spectrumFrom } from "../spectrum/grid.js";
import { onGrid } from "../spectrum/resample.js";

const absorptionNm = [...POPE_FRY_1997.wavelength_nm, ...WOPP_V3.wavelength_nm];
const absorption = [...POPE_FRY_1997.absorption_per_m, ...WOPP_V3.absorption_per_m];

/** Absorption coefficient of pure water. */
export const PURE_WATER_ABSORPTION_PER_M: Spectrum = onGrid(absorptionNm, absorption);

/** Scattering coefficient of pure sea water. */
export const PURE_WATER_SCATTERING_PER_M: Spectrum = onGrid(
  ZHANG_HU_HE_2009.wavelength_nm,
  ZHANG_HU_HE_2009.scattering_per_m,
);

/** Diffuse attenuation of pure sea water, Kw = a_w + b_w / 2 (as in Morel & Maritorena 2001). */
export const PURE_WATER_KD_PER_M: Spectrum = spectrumFrom(
  (_, i) => PURE_WATER_ABSORPTION_PER_M[i] + PURE_WATER_SCATTERING_PER_M[i] / 2,
);
