/**
 * Diffuse attenuation of waters whose colour follows their phytoplankton (case 1), from chlorophyll:
 * Kd = Kw + chi Chl^e, 1/m, Chl in mg/m^3.
 *
 * Table every 5 nm from 350 to 700 nm; beyond 700 nm pure water alone. Domain: 0.02 to 20 mg/m^3, open sea; rivers,
 * harbours and stirred-up sand break the relation. Outside the range an OpticsDomainError is thrown.
 * Source: Morel & Maritorena 2001, Bio-optical properties of oceanic waters: a reappraisal, Journal of Geophysical
 * Research 106, 7163, Table 2.
 */
import { MOREL_MARITORENA_2001 } from "../data/morel-maritorena-2001.js";
import { OpticsDomainError } from "../domain-error.js";
import { type Spectrum, spectrumFrom } from "../spectrum/grid.js";
import { interpolate } from "../spectrum/resample.js";
import { PURE_WATER_ABSORPTION_PER_M, PURE_WATER_KD_PER_M } from "./pure-water.js";

const LEAST_CHLOROPHYLL_MG_M3 = 0.02;
const MOST_CHLOROPHYLL_MG_M3 = 20;

/**
 * Standard deviation of ln(Kd - Kw) about the relation. From memory: the paper's scatter plots lie mostly within a factor
 * of 1.5 of the fit.
 */
export const CHLOROPHYLL_SIGMA_LN_REMAINDER = 0.3;

const { wavelength_nm, Kw_per_m, chi, e } = MOREL_MARITORENA_2001;
const LAST_TABLE_NM = wavelength_nm[wavelength_nm.length - 1];

/**
 * Diffuse attenuation on the grid, 1/m. Never below the absorption of pure water.
 * @param chlorophyll_mg_m3 0.02 to 20.
 * @throws OpticsDomainError outside that range.
 */
export function kdFromChlorophyll(chlorophyll_mg_m3: number): Spectrum {
  if (!(chlorophyll_mg_m3 >= LEAST_CHLOROPHYLL_MG_M3 && chlorophyll_mg_m3 <= MOST_CHLOROPHYLL_MG_M3)) {
    throw new OpticsDomainError(
      "chlorophyll_out_of_range",
      `chlorophyll_mg_m3 is ${chlorophyll_mg_m3}; the relation holds from ${LEAST_CHLOROPHYLL_MG_M3} to ${MOST_CHLOROPHYLL_MG_M3} mg/m3.`,
    );
  }
  return spectrumFrom((nm, i) => {
    if (nm > LAST_TABLE_NM) return PURE_WATER_KD_PER_M[i];
    const at = (column: readonly number[]): number => interpolate(wavelength_nm, column, nm);
    return Math.max(PURE_WATER_ABSORPTION_PER_M[i], at(Kw_per_m) + at(chi) * chlorophyll_mg_m3 ** at(e));
  });
}
