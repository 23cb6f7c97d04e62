/**
 * Daylight of the usual sea air for any sun, from daylights worked out once: `surfaceDaylight` evaluates some twenty
 * exponentials and powers per band, and daylight changes smoothly with the sun's height.
 *
 * Kept at 128 steps of ln(96.08 - zenith), the variable in which the air mass of Kasten & Young 1989 bends least; between
 * them as the polynomial through the nearest six. Within 1e-9 of the formula, relative to the whole light.
 */
import { GRID_SIZE } from "../spectrum/grid.js";
import { SpectrumTable } from "../spectrum/spectrum-table.js";
import { type SurfaceDaylight, surfaceDaylight, underCloud } from "./surface-daylight.js";

const LOWEST_SUN_DEG = 10;
const HIGHEST_SUN_DEG = 90;
const STEPS = 128;
const BENDS_LEAST_FROM_DEG = 96.07995;

const position = (sunElevation_deg: number): number => Math.log(BENDS_LEAST_FROM_DEG - 90 + sunElevation_deg);
const elevationAt = (x: number): number => Math.exp(x) - BENDS_LEAST_FROM_DEG + 90;

function clearSky(x: number): Float64Array {
  const sun = Math.min(HIGHEST_SUN_DEG, Math.max(LOWEST_SUN_DEG, elevationAt(x)));
  const { direct, diffuse } = surfaceDaylight(sun, 0);
  return Float64Array.of(...direct, ...diffuse);
}

let table: SpectrumTable | undefined;
const clearSkies = (): SpectrumTable => {
  table ??= new SpectrumTable(position(LOWEST_SUN_DEG), position(HIGHEST_SUN_DEG), STEPS, clearSky);
  return table;
};

const both = new Float64Array(2 * GRID_SIZE);

/**
 * What `surfaceDaylight` gives for the usual sea air.
 * @param out written and returned; made where it is left out.
 * @throws RangeError outside 10 to 90 degrees.
 */
export function daylightFromTable(
  sunElevation_deg: number,
  cloud_oktas: number,
  out: SurfaceDaylight = { direct: new Float64Array(GRID_SIZE), diffuse: new Float64Array(GRID_SIZE) },
): SurfaceDaylight {
  if (!(sunElevation_deg >= LOWEST_SUN_DEG && sunElevation_deg <= HIGHEST_SUN_DEG)) {
    throw new RangeError(
      `sun elevation ${sunElevation_deg} degrees is outside 10 to 90, where the model holds`,
    );
  }
  clearSkies().mixAt(position(sunElevation_deg), both);
  for (let i = 0; i < GRID_SIZE; i++) {
    out.direct[i] = both[i];
    out.diffuse[i] = both[GRID_SIZE + i];
  }
  return underCloud(out, cloud_oktas);
}
