import { type Spectrum, spectrumFrom, WAVELENGTHS_NM } from "../spectrum/grid.js";
import { interpolate } from "../spectrum/resample.js";
import { PURE_WATER_ABSORPTION_PER_M, PURE_WATER_KD_PER_M } from "./pure-water.js";

const PURE_WATER_FROM_NM = 700;

/**
 * A coarse table of diffuse attenuation brought onto the grid, 1/m.
 *
 * Pure water is subtracted first, the remainder interpolated linearly and pure water added back, since straight
 * interpolation of a 25 nm table reads 10 to 20 % high near 580 nm in clear water. Outside the table the remainder at its end is carried
 * on, to 700 nm at most: no table of diffuse attenuation goes further, and beyond it pure water stands alone. Nothing
 * falls below the absorption of pure water.
 */
export function kdFromTable(wavelengthsNm: readonly number[], kd_per_m: readonly number[]): Spectrum {
  const pure = Array.from(PURE_WATER_KD_PER_M);
  const grid = Array.from(WAVELENGTHS_NM);
  const remainder = wavelengthsNm.map((nm, i) => kd_per_m[i] - interpolate(grid, pure, nm));
  const last = Math.max(PURE_WATER_FROM_NM, wavelengthsNm[wavelengthsNm.length - 1]);
  return spectrumFrom((nm, i) => {
    const extra = nm > last ? 0 : interpolate(wavelengthsNm, remainder, nm);
    return Math.max(PURE_WATER_ABSORPTION_PER_M[i], PURE_WATER_KD_PER_M[i] + extra);
  });
}
