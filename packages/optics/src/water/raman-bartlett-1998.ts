/**
 * Red that water makes itself: downwelling light that inelastic (Raman) scattering shifts to longer wavelengths.
 *
 * b_R = 2.7e-4 per m at 488 nm, falling with excitation wavelength to the power 5.5 (energy units), shift 3400 per cm: Bartlett,
 * Voss, Sathyendranath & Vodacek 1998, Raman scattering by pure water and seawater, Applied Optics 37, 3324. Half of what is
 * scattered goes down; the band is taken as narrow, and excitation and emission as fading exponentially, so that
 * E(z) = b_R E0 (exp(-k z) - exp(-K z)) / (2 (K - k)), with E0 the scalar irradiance that excites and k, K the diffuse
 * attenuation at both wavelengths. An estimate to tell where red that comes from the surface is no longer most of it; the
 * fluorescence of algae, which adds light near 685 nm, is left out.
 */
import { FIRST_NM, type Spectrum, STEP_NM, spectrumFrom, WAVELENGTHS_NM } from "../spectrum/grid.js";

const AT_488_NM_PER_M = 2.7e-4;
const POWER = 5.5;
const SHIFT_PER_CM = 3400;
/** Scalar over downwelling irradiance: one over the mean cosine. */
const SCALAR_OVER_DOWNWELLING = 1.2;

/** Wavelength that excites emission at `emission_nm`. */
export const excitation_nm = (emission_nm: number): number => 1e7 / (1e7 / emission_nm + SHIFT_PER_CM);

/** Scattering coefficient for a wavelength of excitation, 1/m. */
export const ramanScattering_per_m = (excitationNm: number): number =>
  AT_488_NM_PER_M * (488 / excitationNm) ** POWER;

/** Value of a spectrum between two points of the grid, linear. */
function between(spectrum: Spectrum, nm: number): number {
  const at = (nm - FIRST_NM) / STEP_NM;
  const low = Math.floor(at);
  return spectrum[low] + (at - low) * (spectrum[low + 1] - spectrum[low]);
}

/**
 * Downwelling irradiance made by inelastic scattering at one wavelength of the grid, W m^-2 nm^-1; 0 where its excitation lies
 * below the grid.
 * @param below downwelling irradiance just below the surface, W m^-2 nm^-1.
 */
export function ramanDownwellingAt(
  index: number,
  below: Spectrum,
  kd_per_m: Spectrum,
  depth_m: number,
): number {
  const nm = WAVELENGTHS_NM[index];
  const from = excitation_nm(nm);
  if (from < FIRST_NM) return 0;
  const exciting = between(below, from) * SCALAR_OVER_DOWNWELLING;
  const slow = between(kd_per_m, from);
  const fast = kd_per_m[index];
  const spread = fast - slow;
  const faded =
    Math.abs(spread) < 1e-9
      ? depth_m * Math.exp(-fast * depth_m)
      : (Math.exp(-slow * depth_m) - Math.exp(-fast * depth_m)) / spread;
  // A nanometre of excitation spreads over (emission / excitation)^2 nanometres of emission.
  return (ramanScattering_per_m(from) * exciting * faded * (from / nm) ** 2) / 2;
}

/** The same at every wavelength of the grid. */
export const ramanDownwelling = (below: Spectrum, kd_per_m: Spectrum, depth_m: number): Spectrum =>
  spectrumFrom((_, i) => ramanDownwellingAt(i, below, kd_per_m, depth_m));
