/**
 * Scattering coefficient from diffuse attenuation, without asking for a water type.
 *
 * b_p(555) = 5.76 (Kd - Kw)(555)^0.968 and b_p(nm) = b_p(555) (555/nm)^(0.096 - 0.259 ln b_p(555)), plus pure sea water.
 * Fitted by scripts/fit-scattering.mjs to the scattering measured by Williamson & Hollins 2022 (Applied Optics 61, 9951)
 * in waters IA to 7C against Jerlov 1976; standard deviation of ln b about the fit 0.25. Scattering is not fixed by
 * diffuse attenuation: carry a factor of two. Domain: (Kd - Kw)(555) from 0.01 to 0.4 per m; outside it extrapolates,
 * with the exponent held between 0 and 1.
 */
import { FIRST_NM, GRID_SIZE, type Spectrum, STEP_NM, spectrumFrom } from "../spectrum/grid.js";
import { SpectrumTable } from "../spectrum/spectrum-table.js";
import { PURE_WATER_KD_PER_M, PURE_WATER_SCATTERING_PER_M } from "./pure-water.js";

const REFERENCE_NM = 555;
const AT_REFERENCE = (REFERENCE_NM - FIRST_NM) / STEP_NM;
const MAGNITUDE = 5.76;
const POWER = 0.968;
const EXPONENT_AT_UNIT = 0.096;
const EXPONENT_SLOPE = -0.259;
/** Keeps the logarithm finite where a table lies at or below pure water. */
const LEAST_REMAINDER_PER_M = 5e-4;

/** (555/nm)^x kept at ten steps of the exponent: six of them give any other to 1e-11. */
const SLOPES = new SpectrumTable(0, 1, 10, (x) => spectrumFrom((nm) => (REFERENCE_NM / nm) ** x));

/**
 * @param scatteringScale multiplies the particles' part, 1 for the fit itself.
 * @param out written and returned; made where it is left out.
 */
export function scatteringFromKd(
  kd_per_m: Spectrum,
  scatteringScale = 1,
  out: Spectrum = new Float64Array(GRID_SIZE),
): Spectrum {
  const remainder = Math.max(
    LEAST_REMAINDER_PER_M,
    kd_per_m[AT_REFERENCE] - PURE_WATER_KD_PER_M[AT_REFERENCE],
  );
  const particles = MAGNITUDE * remainder ** POWER;
  const exponent = Math.min(1, Math.max(0, EXPONENT_AT_UNIT + EXPONENT_SLOPE * Math.log(particles)));
  SLOPES.mixAt(exponent, out);
  const scaled = scatteringScale * particles;
  for (let i = 0; i < GRID_SIZE; i++) out[i] = PURE_WATER_SCATTERING_PER_M[i] + scaled * out[i];
  return out;
}
