import { seeded } from "../statistics.mjs";

export const DEPTHS = 30;
export const WIND_M_S = 5;
/** Chlorophyll in mg/m3, sun's elevation in degrees and deepest depth in m, side by side. */
export const FIELDS = 3;

/** Scenes that differ in all that counts, none like another: open-sea waters, suns from 10 to 90 degrees, 2 to 40 m. */
export function scenesOf(/** @type {number} */ count) {
  const random = seeded(1);
  const scenes = new Float64Array(count * FIELDS);
  for (let n = 0; n < scenes.length; n += FIELDS) {
    scenes[n] = 0.02 * 1000 ** random();
    scenes[n + 1] = 10 + 80 * random();
    scenes[n + 2] = 2 + 38 * random();
  }
  return scenes;
}
