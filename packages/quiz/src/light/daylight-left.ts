import {
  CLEAR,
  describeByType,
  integrate,
  integrateProduct,
  type JerlovType,
  kdUnderSun,
  multiply,
  pathAttenuation,
  pathTransmittance,
  type Spectrum,
  spectrumFrom,
  surfaceDaylight,
  throughSurface,
  WAVELENGTHS_NM,
  waterFromKd,
  Y_BAR,
} from "@sunfathom/optics";
import { remembered } from "./remember.js";

/** Standard deviations of the 10th and 90th percentile of a normal distribution. */
const Z90 = 1.2816;

const indexOf = (wavelength_nm: number): number => {
  const i = WAVELENGTHS_NM.indexOf(wavelength_nm);
  if (i < 0) throw new RangeError(`${wavelength_nm} nm is not on the grid.`);
  return i;
};
const at = (spectrum: Spectrum, wavelength_nm: number): number =>
  spectrum[indexOf(wavelength_nm)] ?? Number.NaN;

/** Light just below the surface and the water's attenuation under this sun, under a clear sky. */
const below = remembered((sun_elevation_deg: number) =>
  throughSurface(surfaceDaylight(sun_elevation_deg, 0), sun_elevation_deg, 4),
);

/** Attenuation of daylight at the 10th, 50th and 90th percentile of what the type leaves open, 1/m. */
const kdSpread = remembered((type: JerlovType, sun_elevation_deg: number): Spectrum[] => {
  const { kd_reference_per_m, remainder_sigmas } = describeByType(type);
  const sigma = Math.hypot(...remainder_sigmas.map((s) => s.sigma_ln));
  return [-Z90, 0, Z90].map((z) => {
    const water = waterFromKd(kd_reference_per_m, { kdRemainderScale: Math.exp(z * sigma) });
    return kdUnderSun(water, below(sun_elevation_deg).mu0);
  });
});

/** The same at one wavelength. */
export const kdSpreadAt = (type: JerlovType, sun_elevation_deg: number, wavelength_nm: number): number[] =>
  kdSpread(type, sun_elevation_deg).map((kd) => at(kd, wavelength_nm));

/** Daylight at a depth, wavelength by wavelength, as the model's likely value. */
export const daylightAt = remembered(
  (type: JerlovType, sun_elevation_deg: number, depth_m: number): Spectrum =>
    multiply(
      below(sun_elevation_deg).downwelling,
      pathTransmittance(kdSpread(type, sun_elevation_deg)[1] ?? CLEAR, depth_m),
    ),
);

/** Bands of light whose reach is asked for: how much each wavelength counts. */
const BANDS = {
  /** From 600 to 700 nm; half the step at the edge, as the trapezoid rule has it. */
  red: spectrumFrom((nm) => (nm === 600 ? 0.5 : nm > 600 && nm <= 700 ? 1 : 0)),
  /** The same from 500 to 560 nm. */
  green: spectrumFrom((nm) => (nm === 500 || nm === 560 ? 0.5 : nm > 500 && nm < 560 ? 1 : 0)),
  brightness: Y_BAR,
};
type Band = keyof typeof BANDS;

/** The share of a band's light that is left at a depth, of what it is just below the surface. */
export function shareLeft(type: JerlovType, sun_elevation_deg: number, depth_m: number, band: Band): number {
  const kd = kdSpread(type, sun_elevation_deg)[1] ?? CLEAR;
  const top = multiply(below(sun_elevation_deg).downwelling, BANDS[band]);
  return integrateProduct(top, pathTransmittance(kd, depth_m)) / integrate(top);
}

/** Depth at which the light of a band is down to a share of what it is just below the surface, m; to a millimetre. */
export const depthOfShare = remembered(
  (type: JerlovType, sun_elevation_deg: number, share: number, band: Band): number => {
    let low = 0;
    let high = 300;
    while (high - low > 1e-3) {
      const middle = (low + high) / 2;
      if (shareLeft(type, sun_elevation_deg, middle, band) > share) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  },
);

/** The longest waves of the red channel, which water takes fastest. */
const LONGEST_RED_NM = 700;
const longestRedKd = (type: JerlovType, sun_elevation_deg: number): number =>
  kdSpreadAt(type, sun_elevation_deg, LONGEST_RED_NM)[1] ?? Number.NaN;

/** The share that is left of the longest red waves alone. */
export const longestRedLeft = (type: JerlovType, sun_elevation_deg: number, depth_m: number): number =>
  Math.exp(-longestRedKd(type, sun_elevation_deg) * depth_m);

/** Depth at which a share of the longest red waves is left, m. */
export const longestRedReach_m = (type: JerlovType, sun_elevation_deg: number, share: number): number =>
  -Math.log(share) / longestRedKd(type, sun_elevation_deg);

/** Stops that a metre of a short path takes from light of one wavelength, as the model's likely value. */
export const pathStopsPerMetre = remembered((type: JerlovType, wavelength_nm: number): number => {
  const path = pathAttenuation(waterFromKd(describeByType(type).kd_reference_per_m));
  return at(path, wavelength_nm) * Math.LOG2E;
});
