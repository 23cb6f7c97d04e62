// Time and memory of the product's own way against the number of scenes, and of depths. Prints rows.
import { SEEN_COUNT } from "@sunfathom/optics";
import { median } from "../statistics.mjs";
import { attenuate } from "./fast.mjs";
import { DEPTHS, scenesOf } from "./scenes.mjs";

const { sceneCounts, depthCounts, scenesPerDepthCount } = JSON.parse(process.argv[2]);
const BATCH = 100;
/** Small counts are run more often, so that each row rests on as much work. */
const REPEATS = 5;
const WARM_UP = 2000;
const scenes = scenesOf(Math.max(...sceneCounts, scenesPerDepthCount, WARM_UP));
const out = new Float64Array(BATCH * Math.max(DEPTHS, ...depthCounts) * SEEN_COUNT);

/** @param {number} count @param {number} depths */
function secondsFor(count, depths) {
  const times = Array.from({ length: count > 1e5 ? 1 : REPEATS }, () => {
    const begun = process.hrtime.bigint();
    for (let from = 0; from < count; from += BATCH) {
      attenuate(scenes, from, Math.min(count, from + BATCH), out, depths);
    }
    return Number(process.hrtime.bigint() - begun) / 1e9;
  });
  return median(times);
}

secondsFor(WARM_UP, DEPTHS);
for (const depths of depthCounts) secondsFor(200, depths);
const byScenes = sceneCounts.map((/** @type {number} */ count) => {
  const seconds = secondsFor(count, DEPTHS);
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  const inputs = scenes.byteLength + out.byteLength;
  return { scenes: count, seconds, memory_MB: (heapUsed + arrayBuffers - inputs) / 1e6 };
});
const byDepths = depthCounts.map((/** @type {number} */ depths) => ({
  depths,
  seconds: secondsFor(scenesPerDepthCount, depths),
}));
console.log(JSON.stringify({ byScenes, byDepths, scenesPerDepthCount }));
