/**
 * The depth at which a white disc, 30 cm across and lowered from above the water, is lost to the eye, from three relations.
 *
 * - Lee et al. 2015: Z = ln(|0.14 - Rrs| / 0.013) / (2.5 K), K the least Kd over 443 to 665 nm and Rrs the remote-sensing
 *   reflectance there. Measured and predicted depths differ by 18 % on average (N = 338, below 1 to above 30 m).
 *   Source: Lee, Shang, Hu, Du, Weidemann, Hou, Lin & Lin 2015, Secchi disk depth: a new theory and mechanistic model for
 *   underwater visibility, Remote Sensing of Environment 169, 139.
 * - Poole & Atkins 1929: Kd(PAR) = 1.7 / Z; later work finds 1.4 to above 2 for the constant.
 *   Source: Journal of the Marine Biological Association 16, 297.
 * - Classical theory: Z = 8.7 / (c + Kd), photopic. Constant from memory (8 to 9.6 in the literature, Preisendorfer 1986).
 */
import { type Spectrum, WAVELENGTHS_NM } from "../spectrum/grid.js";
import { PURE_WATER_SCATTERING_PER_M } from "./pure-water.js";
import type { WaterOptics } from "./water-optics.js";

/** Standard deviation of ln Z about Lee's relation: a mean absolute difference of 18 % is that of a normal spread of 0.18 sqrt(pi/2). */
export const SECCHI_SIGMA_LN = 0.225;

const BAND_NM = [443, 665] as const;
/** Share of particle scattering that goes backwards: mean of the ocean stations of Petzold 1972, SIO Ref. 72-78, from memory. */
const BACKSCATTERED_SHARE = 0.018;

const IN_BAND = Array.from(WAVELENGTHS_NM, (nm, i) => ({ nm, i })).filter(
  ({ nm }) => nm >= BAND_NM[0] && nm <= BAND_NM[1],
);

/** Index on the grid of the wavelength between 443 and 665 nm at which the water is clearest. */
export function clearestIndex(kd_per_m: Spectrum): number {
  return IN_BAND.reduce((best, { i }) => (kd_per_m[i] < kd_per_m[best] ? i : best), IN_BAND[0].i);
}

/**
 * Remote-sensing reflectance at a grid index, 1/sr: Gordon's quadratic with the coefficients and the surface factor of
 * Lee, Carder & Arnone 2002, Applied Optics 41, 5755 (from memory). It changes a Secchi depth by a few per cent.
 */
function remoteSensingReflectance_per_sr(water: WaterOptics, i: number): number {
  const pure = PURE_WATER_SCATTERING_PER_M[i];
  const backscatter = pure / 2 + BACKSCATTERED_SHARE * Math.max(0, water.scattering_per_m[i] - pure);
  const u = backscatter / (water.absorption_per_m[i] + backscatter);
  const below = (0.089 + 0.1245 * u) * u;
  return (0.52 * below) / (1 - 1.7 * below);
}

/** Lee et al. 2015 as published. @param leastKd_per_m least Kd over 443 to 665 nm. @returns depth, m. */
export function leeSecchiDepth_m(leastKd_per_m: number, reflectance_per_sr: number): number {
  return Math.log(Math.abs(0.14 - reflectance_per_sr) / 0.013) / (2.5 * leastKd_per_m);
}

/** Secchi depth of a water under the reference sun, after Lee et al. 2015, m. */
export function secchiDepth_m(water: WaterOptics): number {
  const i = clearestIndex(water.kd_reference_per_m);
  return leeSecchiDepth_m(water.kd_reference_per_m[i], remoteSensingReflectance_per_sr(water, i));
}

/** Diffuse attenuation of PAR down to the Secchi depth after Poole & Atkins 1929, 1/m. */
export function pooleAtkinsKdPar_per_m(secchi_depth_m: number): number {
  return 1.7 / secchi_depth_m;
}

/** Secchi depth of the classical theory, m, from photopic beam and diffuse attenuation. */
export function classicalSecchiDepth_m(beam_attenuation_per_m: number, kd_per_m: number): number {
  return 8.7 / (beam_attenuation_per_m + kd_per_m);
}
