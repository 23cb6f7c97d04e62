// The limit: one multiply-add for each wavelength, depth and scene, and nothing else.
import { GRID_SIZE } from "@sunfathom/optics";
import { measure } from "./measure.mjs";
import { DEPTHS } from "./scenes.mjs";

const PER_SCENE = GRID_SIZE * DEPTHS;
const values = Float64Array.from({ length: PER_SCENE }, (_, i) => 1 / (i + 1));
const weights = Float64Array.from({ length: PER_SCENE }, (_, i) => 1 / (i + 2));

/** @param {Float64Array} a @param {Float64Array} b */
function sumOfProducts(a, b) {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

/** @param {Float64Array} _ @param {number} from @param {number} to @param {Float64Array} out */
export function attenuate(_, from, to, out) {
  for (let n = from; n < to; n++) out[n - from] = sumOfProducts(values, weights);
}

measure(import.meta.url, attenuate);
