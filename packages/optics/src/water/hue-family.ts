/**
 * A family of waters for those who know only how their water looks: diffuse attenuation from a turbidity and a hue mix.
 *
 * ln(Kd - Kw) is interpolated, wavelength by wavelength, in ln of the turbidity along three rows of published water types:
 * oceanic (I to III), green coastal (1C to 7C) and brown (9C); between the rows it is mixed by `hue_mix` (0 oceanic,
 * 1 green, 2 brown). Turbidity is the geometric mean of Kd - Kw over 440 to 600 nm, 1/m. A row's end keeps its shape and
 * is scaled beyond it. So at a type's own turbidity and mix the family gives that type back.
 * Domain: turbidity 0.0005 to 5 per m; the types reach from 0.005 (I) to 0.8 (9C), the rest is extrapolated by scaling.
 * Source: Jerlov 1976, Marine Optics, 2nd edition, Table XXVII. Interpolation and mix are ours.
 */
import {
  FIRST_NM,
  GRID_SIZE,
  type Spectrum,
  STEP_NM,
  spectrumFrom,
  WAVELENGTHS_NM,
} from "../spectrum/grid.js";
import { type JerlovType, jerlovKd } from "./jerlov-1976.js";
import { PURE_WATER_ABSORPTION_PER_M, PURE_WATER_KD_PER_M } from "./pure-water.js";

/** Where the table lies at or below pure water, half of its last digit stands in, so that logarithms exist. */
const LEAST_REMAINDER_PER_M = 5e-4;
const BAND_NM = [440, 600] as const;
const LAST_TABLE_NM = 700;

/**
 * Standard deviation of ln(Kd - Kw) about the family at equal turbidity: root mean square, over 440 to 600 nm, of what
 * Morel & Maritorena 2001 and Austin & Petzold 1986 differ by from Jerlov's types IA to III (the test beside this file
 * computes it). For coastal waters no second table exists; the same is taken.
 */
export const SPECTRAL_SHAPE_SIGMA_LN = 0.27;

interface RowPoint {
  lnTurbidity: number;
  lnRemainder: Spectrum;
}

/** ln(Kd - Kw), wavelength by wavelength. */
export function lnRemainder(kd_per_m: Spectrum): Spectrum {
  return spectrumFrom((_, i) =>
    Math.log(Math.max(LEAST_REMAINDER_PER_M, kd_per_m[i] - PURE_WATER_KD_PER_M[i])),
  );
}

/** ln of the turbidity: mean of ln(Kd - Kw) over 440 to 600 nm. */
export const lnTurbidity = (kd_per_m: Spectrum): number => meanInBand(lnRemainder(kd_per_m));

function meanInBand(values: Spectrum): number {
  const inBand = values.filter((_, i) => WAVELENGTHS_NM[i] >= BAND_NM[0] && WAVELENGTHS_NM[i] <= BAND_NM[1]);
  return inBand.reduce((sum, value) => sum + value, 0) / inBand.length;
}

const rowOf = (types: readonly JerlovType[]): RowPoint[] =>
  types.map((type) => {
    const kd = jerlovKd(type);
    return { lnTurbidity: lnTurbidity(kd), lnRemainder: lnRemainder(kd) };
  });

const ROWS = [rowOf(["I", "IA", "IB", "II", "III"]), rowOf(["1C", "3C", "5C", "7C"]), rowOf(["9C"])];

interface Stretch {
  low: Spectrum;
  high: Spectrum;
  share: number;
  shift: number;
}

/** Between which points of a row a turbidity lies; at a row's end the end point itself, shifted in the logarithm. */
function stretchOf(row: readonly RowPoint[], lnTurbid: number): Stretch {
  const after = row.findIndex((point) => point.lnTurbidity > lnTurbid);
  const high = row[after === -1 ? row.length - 1 : after];
  const low = after > 0 ? row[after - 1] : high;
  const between = high !== low;
  return {
    low: low.lnRemainder,
    high: high.lnRemainder,
    share: between ? (lnTurbid - low.lnTurbidity) / (high.lnTurbidity - low.lnTurbidity) : 0,
    shift: between ? 0 : lnTurbid - low.lnTurbidity,
  };
}

const remainderAt = ({ low, high, share, shift }: Stretch, i: number): number =>
  low[i] + share * (high[i] - low[i]) + shift;

/**
 * Diffuse attenuation of a member of the family under the reference sun, on the grid, 1/m. Rises with turbidity at every
 * wavelength up to 700 nm; beyond, pure water alone. Never below the absorption of pure water.
 * @param turbidity_per_m geometric mean of Kd - Kw over 440 to 600 nm.
 * @param hueMix 0 oceanic, 1 green coastal, 2 brown.
 */
export function familyKd(turbidity_per_m: number, hueMix: number): Spectrum {
  const lnTurbid = Math.log(turbidity_per_m);
  const lower = hueMix < 1 ? 0 : 1;
  const share = hueMix - lower;
  const from = stretchOf(ROWS[lower], lnTurbid);
  const to = stretchOf(ROWS[lower + 1], lnTurbid);
  const out = new Float64Array(GRID_SIZE);
  for (let i = 0; i < GRID_SIZE; i++) {
    const mixed = (1 - share) * remainderAt(from, i) + share * remainderAt(to, i);
    const remainder = WAVELENGTHS_NM[i] > LAST_TABLE_NM ? 0 : Math.exp(mixed);
    out[i] = Math.max(PURE_WATER_ABSORPTION_PER_M[i], PURE_WATER_KD_PER_M[i] + remainder);
  }
  return out;
}

/** Beyond green coastal water, brown water has the particles of the coast. */
export const coastalShareOfMix = (hueMix: number): number => Math.min(1, hueMix);

const VIOLET = (440 - FIRST_NM) / STEP_NM;
const GREEN = (555 - FIRST_NM) / STEP_NM;

/**
 * How coastal a water is, 0 to 1: where, between the oceanic and the green coastal row at its turbidity, the fall of ln(Kd - Kw) from
 * violet to green lies. Of a member of the family, its hue mix.
 */
export function coastalShareOf(kd_per_m: Spectrum): number {
  const remainder = lnRemainder(kd_per_m);
  const lnTurbid = meanInBand(remainder);
  const [oceanic, coastal] = ROWS.slice(0, 2).map((row) => {
    const stretch = stretchOf(row, lnTurbid);
    return remainderAt(stretch, VIOLET) - remainderAt(stretch, GREEN);
  });
  const share = (remainder[VIOLET] - remainder[GREEN] - oceanic) / (coastal - oceanic);
  return Math.min(1, Math.max(0, share));
}
