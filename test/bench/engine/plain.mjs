// The formulas as they are written down: an exponential for each wavelength and depth.
import {
  integrateProduct,
  integrateTriple,
  kdFromChlorophyll,
  kdUnderSun,
  pathTransmittance,
  surfaceDaylight,
  throughSurface,
  waterFromKd,
} from "@sunfathom/optics";
import { measure } from "./measure.mjs";
import { SENSITIVITIES } from "./observers.mjs";
import { DEPTHS, FIELDS, WIND_M_S } from "./scenes.mjs";

/** @param {Float64Array} scenes @param {number} from @param {number} to @param {Float64Array} out */
export function attenuate(scenes, from, to, out) {
  let at = 0;
  for (let n = from; n < to; n++) {
    const [chlorophyll, sun_deg, deepest_m] = scenes.subarray(n * FIELDS, (n + 1) * FIELDS);
    const light = throughSurface(surfaceDaylight(sun_deg, 0), sun_deg, WIND_M_S);
    const kd = kdUnderSun(waterFromKd(kdFromChlorophyll(chlorophyll), { coastalShare: 0 }), light.mu0);
    for (let depth = 1; depth <= DEPTHS; depth++) {
      const left = pathTransmittance(kd, (deepest_m * depth) / DEPTHS);
      for (const seen of SENSITIVITIES) {
        const whole = integrateProduct(light.downwelling, seen);
        out[at++] = Math.log2(whole / integrateTriple(light.downwelling, left, seen));
      }
    }
  }
}

measure(import.meta.url, attenuate);
