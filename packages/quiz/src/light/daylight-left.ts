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

/** Bands of light whose reach is asked for: how much each wavelength counts. */
const BANDS = {
  /** From 600 to 700 nm; half the step at the edge, as the trapezoid rule has it. */
  red: spectrumFrom((nm) => (nm === 600 ? 0.5 : nm > 600 && nm <= 700 ? 1 : 0)),
  brightness: Y_BAR,
};

/** Depth at which the light of a band is down to a share of what it is just below the surface, m; to a millimetre. */
export const depthOfShare = remembered(
  (type: JerlovType, sun_elevation_deg: number, share: number, band: keyof typeof BANDS): number => {
    const kd = kdSpread(type, sun_elevation_deg)[1] ?? CLEAR;
    const top = multiply(below(sun_elevation_deg).downwelling, BANDS[band]);
    const all = integrate(top);
    let low = 0;
    let high = 300;
    while (high - low > 1e-3) {
      const middle = (low + high) / 2;
      if (integrateProduct(top, pathTransmittance(kd, middle)) > share * all) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  },
);

/** Stops that a metre of a short path takes from light of one wavelength, as the model's likely value. */
export const pathStopsPerMetre = remembered((type: JerlovType, wavelength_nm: number): number => {
  const path = pathAttenuation(waterFromKd(describeByType(type).kd_reference_per_m));
  return at(path, wavelength_nm) * Math.LOG2E;
});
