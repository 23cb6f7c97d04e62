import { FIRST_NM, type Spectrum, STEP_NM, WAVELENGTHS_NM } from "../spectrum/grid.js";

/** h c N_A, J m / mol, from the exact SI constants. */
const MOLAR_PHOTON_ENERGY = 6.62607015e-34 * 299792458 * 6.02214076e23;
const FROM = (400 - FIRST_NM) / STEP_NM;
const TO = (700 - FIRST_NM) / STEP_NM;

/** Photosynthetically available radiation: photons from 400 to 700 nm, micromol m^-2 s^-1, from W m^-2 nm^-1. */
export function par_umol_m2_s(irradiance: Spectrum): number {
  const photons = (i: number) => irradiance[i] * WAVELENGTHS_NM[i];
  let sum = (photons(FROM) + photons(TO)) / 2;
  for (let i = FROM + 1; i < TO; i++) sum += photons(i);
  return (sum * STEP_NM * 1e-9 * 1e6) / MOLAR_PHOTON_ENERGY;
}
