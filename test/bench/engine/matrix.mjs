// The same with a general matrix library: transmittances of all depths as a matrix, times the matrix of the observers.
import {
  kdFromChlorophyll,
  kdUnderSun,
  surfaceDaylight,
  throughSurface,
  waterFromKd,
} from "@sunfathom/optics";
import { Matrix } from "ml-matrix";
import { measure } from "./measure.mjs";
import { SENSITIVITIES } from "./observers.mjs";
import { DEPTHS, FIELDS, WIND_M_S } from "./scenes.mjs";

const halfAtEnds = (/** @type {Float64Array} */ s) =>
  s.map((value, i) => (i === 0 || i === s.length - 1 ? value / 2 : value));
const observers = new Matrix(SENSITIVITIES.map((s) => Array.from(halfAtEnds(s)))).transpose();

/** @param {Float64Array} scenes @param {number} from @param {number} to @param {Float64Array} out */
export function attenuate(scenes, from, to, out) {
  let at = 0;
  for (let n = from; n < to; n++) {
    const [chlorophyll, sun_deg, deepest_m] = scenes.subarray(n * FIELDS, (n + 1) * FIELDS);
    const light = throughSurface(surfaceDaylight(sun_deg, 0), sun_deg, WIND_M_S);
    const kd = kdUnderSun(waterFromKd(kdFromChlorophyll(chlorophyll), { coastalShare: 0 }), light.mu0);
    const depths = Matrix.columnVector(
      Array.from({ length: DEPTHS }, (_, d) => (deepest_m * (d + 1)) / DEPTHS),
    );
    const top = Matrix.rowVector(Array.from(light.downwelling));
    const left = Matrix.exp(depths.mmul(Matrix.rowVector(Array.from(kd))).mul(-1)).mulRowVector(
      top.to1DArray(),
    );
    const whole = Matrix.log2(top.mmul(observers)).to1DArray();
    const losses = Matrix.log2(left.mmul(observers)).mul(-1).addRowVector(whole);
    for (const row of losses.to2DArray()) for (const value of row) out[at++] = value;
  }
}

measure(import.meta.url, attenuate);
