// What the formulas need of tables, for a program in another language.
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { WAVELENGTHS_NM } from "@sunfathom/optics";
import { BIRD_RIORDAN_1986 } from "../../../packages/optics/dist/data/bird-riordan-1986.js";
import { MOREL_MARITORENA_2001 } from "../../../packages/optics/dist/data/morel-maritorena-2001.js";
import { interpolate } from "../../../packages/optics/dist/spectrum/resample.js";
import {
  PURE_WATER_ABSORPTION_PER_M,
  PURE_WATER_KD_PER_M,
  PURE_WATER_SCATTERING_PER_M,
} from "../../../packages/optics/dist/water/pure-water.js";
import { SENSITIVITIES } from "./observers.mjs";
import { scenesOf } from "./scenes.mjs";

const grid = Array.from(WAVELENGTHS_NM);
const onGrid = (/** @type {readonly number[]} */ values) =>
  grid.map((nm) => interpolate(MOREL_MARITORENA_2001.wavelength_nm, values, nm));

/** Bands that the grid touches, and one on either side. */
const bands = BIRD_RIORDAN_1986.wavelength_nm;
const first = bands.findLastIndex((nm) => nm <= grid[0]);
const afterLast = bands.findIndex((nm) => nm >= grid[grid.length - 1]) + 1;
const inBands = (/** @type {readonly number[]} */ values) => values.slice(first, afterLast);

/** Writes tables and scenes into a folder of their own. @param {number} count @returns {string} the folder */
export function writeInputs(count) {
  const folder = mkdtempSync(join(tmpdir(), "bench-"));
  const tables = {
    nm: grid,
    a_w: Array.from(PURE_WATER_ABSORPTION_PER_M),
    b_w: Array.from(PURE_WATER_SCATTERING_PER_M),
    k_w: Array.from(PURE_WATER_KD_PER_M),
    Kw: onGrid(MOREL_MARITORENA_2001.Kw_per_m),
    chi: onGrid(MOREL_MARITORENA_2001.chi),
    e: onGrid(MOREL_MARITORENA_2001.e),
    band_nm: inBands(bands),
    ozone: inBands(BIRD_RIORDAN_1986.ozone),
    vapour: inBands(BIRD_RIORDAN_1986.water_vapour),
    gas: inBands(BIRD_RIORDAN_1986.mixed_gas),
    extraterrestrial: inBands(BIRD_RIORDAN_1986.extraterrestrial_W_m2_nm),
    observers: SENSITIVITIES.map((s) => Array.from(s)),
  };
  writeFileSync(join(folder, "tables.json"), JSON.stringify(tables));
  writeFileSync(join(folder, "scenes.bin"), Buffer.from(scenesOf(count).buffer));
  return folder;
}
