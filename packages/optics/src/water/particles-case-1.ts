/**
 * Particle scattering of waters whose particles follow their phytoplankton (case 1): b_p(550) = 0.416 Chl^0.766, 1/m, and
 * (550/nm)^1 from there; chlorophyll from Kd(490) by Kd = Kw + chi Chl^e of the same paper.
 *
 * Morel & Maritorena 2001, Journal of Geophysical Research 106, 7163: they take b_p(660) = 0.347 Chl^0.766 of Loisel & Morel 1998
 * (Limnology and Oceanography 43, 847) to 550 nm by 1/nm; digits as in the public code of an ocean-optics laboratory. Domain:
 * chlorophyll 0.02 to 20 mg/m^3, open sea; clearer and murkier waters extrapolate.
 */
import { MOREL_MARITORENA_2001 } from "../data/morel-maritorena-2001.js";
import { FIRST_NM, type Spectrum, STEP_NM } from "../spectrum/grid.js";

const CHLOROPHYLL_NM = 490;
const AT_CHLOROPHYLL = (CHLOROPHYLL_NM - FIRST_NM) / STEP_NM;
const ROW = MOREL_MARITORENA_2001.wavelength_nm.indexOf(CHLOROPHYLL_NM);
const KW_PER_M = MOREL_MARITORENA_2001.Kw_per_m[ROW];
const CHI = MOREL_MARITORENA_2001.chi[ROW];
const E = MOREL_MARITORENA_2001.e[ROW];
/** Keeps a water at or below pure water above nothing: half of the last digit of the tables of Kd. */
const LEAST_REMAINDER_PER_M = 5e-4;

export const CASE_1_NM = 550;
export const CASE_1_EXPONENT = 1;

/** Chlorophyll with which case 1 water shows this diffuse attenuation at 490 nm, mg/m^3. */
export function chlorophyllFromKd_mg_m3(kd_per_m: Spectrum): number {
  const remainder = Math.max(LEAST_REMAINDER_PER_M, kd_per_m[AT_CHLOROPHYLL] - KW_PER_M);
  return (remainder / CHI) ** (1 / E);
}

/** Scattering by particles at 550 nm, 1/m. */
export const case1Particles_per_m = (chlorophyll_mg_m3: number): number => 0.416 * chlorophyll_mg_m3 ** 0.766;
