/**
 * Scattering coefficient from diffuse attenuation, without asking for a water type.
 *
 * Two relations, mixed in their logarithms by how coastal the water is: open sea scatters as its chlorophyll says (case 1, see
 * particles-case-1.ts); the coast as b_p(555) = 7.47 (Kd - Kw)(555)^1.094 and (555/nm)^0.03, fitted by scripts/fit-scattering.mjs to the
 * scattering measured by Williamson & Hollins 2022 (Applied Optics 61, 9951) in waters 1C to 7C against Jerlov 1976; standard
 * deviation of ln b about the fit 0.31. Pure sea water is added. Scattering is not fixed by diffuse attenuation: carry a factor
 * of two. Domain: (Kd - Kw)(555) of the coast from 0.06 to 0.4 per m; outside it extrapolates.
 */
import { FIRST_NM, GRID_SIZE, type Spectrum, STEP_NM, spectrumFrom } from "../spectrum/grid.js";
import { SpectrumTable } from "../spectrum/spectrum-table.js";
import { coastalShareOf } from "./hue-family.js";
import {
  CASE_1_EXPONENT,
  CASE_1_NM,
  case1Particles_per_m,
  chlorophyllFromKd_mg_m3,
} from "./particles-case-1.js";
import { PURE_WATER_KD_PER_M, PURE_WATER_SCATTERING_PER_M } from "./pure-water.js";

const REFERENCE_NM = 555;
const AT_REFERENCE = (REFERENCE_NM - FIRST_NM) / STEP_NM;
const COAST = { magnitude: 7.47, power: 1.094, exponent: 0.03 };
/** Keeps the logarithm finite where a table lies at or below pure water. */
const LEAST_REMAINDER_PER_M = 5e-4;

/** (555/nm)^x kept at ten steps of the exponent: six of them give any other to 1e-11. */
const SLOPES = new SpectrumTable(0, 1, 10, (x) => spectrumFrom((nm) => (REFERENCE_NM / nm) ** x));

function lnCoast(kd_per_m: Spectrum): number {
  const remainder = kd_per_m[AT_REFERENCE] - PURE_WATER_KD_PER_M[AT_REFERENCE];
  return Math.log(COAST.magnitude) + COAST.power * Math.log(Math.max(LEAST_REMAINDER_PER_M, remainder));
}

function lnOpenSea(kd_per_m: Spectrum): number {
  const at550 = case1Particles_per_m(chlorophyllFromKd_mg_m3(kd_per_m));
  return Math.log(at550) + CASE_1_EXPONENT * Math.log(CASE_1_NM / REFERENCE_NM);
}

/**
 * @param scatteringScale multiplies the particles' part, 1 for the relation itself.
 * @param coastalShare 0 open sea, 1 coast; by the shape of the attenuation where it is left out.
 * @param out written and returned; made where it is left out.
 */
export function scatteringFromKd(
  kd_per_m: Spectrum,
  scatteringScale = 1,
  coastalShare = coastalShareOf(kd_per_m),
  out: Spectrum = new Float64Array(GRID_SIZE),
): Spectrum {
  const mixed = (openSea: number, coast: number): number => openSea + coastalShare * (coast - openSea);
  const scaled = scatteringScale * Math.exp(mixed(lnOpenSea(kd_per_m), lnCoast(kd_per_m)));
  SLOPES.mixAt(mixed(CASE_1_EXPONENT, COAST.exponent), out);
  for (let i = 0; i < GRID_SIZE; i++) out[i] = PURE_WATER_SCATTERING_PER_M[i] + scaled * out[i];
  return out;
}
