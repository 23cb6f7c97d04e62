import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { SEEN_COUNT } from "@sunfathom/optics";
import { DEPTHS, scenesOf } from "./scenes.mjs";

/** Scenes worked out at a time, into memory that is used again. */
const BATCH = 1000;
const WARM_UP = 2000;

/**
 * Where the module at `url` is the program: works out as many scenes as the first argument says, after some to get warm, and
 * prints the seconds. A second argument names a file for the first batch's losses.
 * @param {string} url
 * @param {(scenes: Float64Array, from: number, to: number, out: Float64Array) => void} attenuate
 */
export function measure(url, attenuate) {
  if (process.argv[1] !== fileURLToPath(url)) return;
  const count = Number(process.argv[2]);
  const scenes = scenesOf(count);
  const out = new Float64Array(BATCH * DEPTHS * SEEN_COUNT);
  const run = (/** @type {number} */ to) => {
    for (let from = 0; from < to; from += BATCH) attenuate(scenes, from, Math.min(to, from + BATCH), out);
  };
  run(Math.min(count, WARM_UP));
  const begun = process.hrtime.bigint();
  run(count);
  const seconds = Number(process.hrtime.bigint() - begun) / 1e9;
  if (process.argv[3] !== undefined) {
    const size = Math.min(count, BATCH);
    attenuate(scenes, 0, size, out);
    writeFileSync(process.argv[3], Buffer.from(out.buffer, 0, size * DEPTHS * SEEN_COUNT * 8));
  }
  console.log(JSON.stringify({ seconds, scenes: count }));
}
