// Processor time of each picture, as SVG and as PNG 800 px wide, over that of `attenuation` for the same scene, in turn.
import { operations, pictures } from "./drawing.mjs";

/** Scenes that differ in sun and depth, so that nothing is met twice. @param {number} nth */
const sceneOf = (nth) => ({
  water_type: "IB",
  sun_elevation_deg: 30 + (nth % 400) / 10,
  min_depth_m: 5,
  max_depth_m: 12 + (nth % 37) / 10,
  lamp_flux_lm: 4000,
  lamp_distance_m: 0.8,
});

/** Processor time, ms. @param {() => void} call */
function timeOf(call) {
  const before = process.cpuUsage();
  call();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

const REFERENCES = 40;
const attenuation = operations.find(({ name }) => name === "attenuation");
let nth = 0;
function reference() {
  for (let i = 0; i < REFERENCES; i += 1) {
    nth += 1;
    if (attenuation?.reply(sceneOf(nth)).status !== "ok") throw new Error("attenuation refuses");
  }
}

/** @param {string} name @param {"svg" | "png"} format */
function drawnAs(name, format) {
  nth += 1;
  const picture = pictures.find((one) => one.name === name);
  if (picture?.draw(sceneOf(nth), format) !== "ok") throw new Error(`${name} refuses`);
}

/**
 * Times of every picture and their ratios to `attenuation`, each the median of some rounds.
 * @param {{ rounds: number, warmUps: number }} size
 */
export function measurePictures({ rounds, warmUps }) {
  const rows = pictures.flatMap(({ name }) =>
    /** @type {const} */ (["svg", "png"]).map((format) => ({
      name,
      format,
      ms: /** @type {number[]} */ ([]),
      ratios: /** @type {number[]} */ ([]),
    })),
  );
  for (let round = -warmUps; round < rounds; round += 1)
    for (const { name, format, ms, ratios } of rows) {
      const before_ms = timeOf(reference);
      const own_ms = timeOf(() => drawnAs(name, format));
      const reference_ms = (before_ms + timeOf(reference)) / 2 / REFERENCES;
      if (round < 0) continue;
      ms.push(own_ms);
      ratios.push(own_ms / reference_ms);
    }
  return rows;
}
