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
import { GRID_SIZE, type Spectrum, spectrumFrom, WAVELENGTHS_NM } from "../spectrum/grid.js";
import { interpolate } from "../spectrum/resample.js";
import { SpectrumTable } from "../spectrum/spectrum-table.js";
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

/** Kw + chi Chl^e at a logarithm of the concentration, as published: nothing beyond the table, and no floor. */
function relation(lnChlorophyll: number): Spectrum {
  const at = (column: readonly number[], nm: number): number => interpolate(wavelength_nm, column, nm);
  return spectrumFrom((nm) => at(Kw_per_m, nm) + at(chi, nm) * Math.exp(lnChlorophyll * at(e, nm)));
}

/** Kept at every 5 % of concentration: between them the relation is so smooth that six of them give it to 1e-10. */
const STEPS = 140;
let table: SpectrumTable | undefined;
const relationTable = (): SpectrumTable => {
  table ??= new SpectrumTable(
    Math.log(LEAST_CHLOROPHYLL_MG_M3),
    Math.log(MOST_CHLOROPHYLL_MG_M3),
    STEPS,
    relation,
  );
  return table;
};

/**
 * Diffuse attenuation on the grid, 1/m. Never below the absorption of pure water.
 * @param chlorophyll_mg_m3 0.02 to 20.
 * @param out written and returned; made where it is left out.
 * @throws OpticsDomainError outside that range.
 */
export function kdFromChlorophyll(
  chlorophyll_mg_m3: number,
  out: Spectrum = new Float64Array(GRID_SIZE),
): Spectrum {
  if (!(chlorophyll_mg_m3 >= LEAST_CHLOROPHYLL_MG_M3 && chlorophyll_mg_m3 <= MOST_CHLOROPHYLL_MG_M3)) {
    throw new OpticsDomainError({
      code: "chlorophyll_out_of_range",
      parameters: {
        chlorophyll_mg_m3,
        min_mg_m3: LEAST_CHLOROPHYLL_MG_M3,
        max_mg_m3: MOST_CHLOROPHYLL_MG_M3,
      },
    });
  }
  relationTable().mixAt(Math.log(chlorophyll_mg_m3), out);
  for (let i = 0; i < GRID_SIZE; i++) {
    const kd = WAVELENGTHS_NM[i] > LAST_TABLE_NM ? PURE_WATER_KD_PER_M[i] : out[i];
    out[i] = Math.max(PURE_WATER_ABSORPTION_PER_M[i], kd);
  }
  return out;
}
