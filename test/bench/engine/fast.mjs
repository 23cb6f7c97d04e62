// The product's own way: what who has many scenes writes. Prints how long it took.
import {
  DepthLosses,
  daylightFromTable,
  emptyWater,
  GRID_SIZE,
  kdFromChlorophyll,
  kdUnderSun,
  SEEN_COUNT,
  throughSurface,
  waterFromKd,
} from "@sunfathom/optics";
import { measure } from "./measure.mjs";
import { OBSERVERS } from "./observers.mjs";
import { DEPTHS, FIELDS, WIND_M_S } from "./scenes.mjs";

const spectrum = () => new Float64Array(GRID_SIZE);
const daylight = { direct: spectrum(), diffuse: spectrum() };
const [below, reference, kd] = [spectrum(), spectrum(), spectrum()];
const water = emptyWater();
const NOMINAL = { coastalShare: 0 };
const losses = new DepthLosses();
const depths = { first_m: 0, step_m: 0, count: DEPTHS };

/** @param {Float64Array} scenes @param {number} from @param {number} to @param {Float64Array} out @param {number} count */
export function attenuate(scenes, from, to, out, count = DEPTHS) {
  depths.count = count;
  for (let n = from; n < to; n++) {
    const at = n * FIELDS;
    const sun_deg = scenes[at + 1];
    const { mu0 } = throughSurface(daylightFromTable(sun_deg, 0, daylight), sun_deg, WIND_M_S, below);
    kdUnderSun(waterFromKd(kdFromChlorophyll(scenes[at], reference), NOMINAL, water), mu0, undefined, kd);
    depths.step_m = scenes[at + 2] / count;
    depths.first_m = depths.step_m;
    losses.setLight(below, OBSERVERS);
    losses.over(kd, depths, out, (n - from) * count * SEEN_COUNT);
  }
}

measure(import.meta.url, attenuate);
