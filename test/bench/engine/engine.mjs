// Attenuation of many scenes: the product against NumPy, a matrix library and the bare limit; then how it grows.
import { readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { MEASURED_CORE, runJson } from "../process.mjs";
import { exponent, median } from "../statistics.mjs";
import { DEPTHS } from "./scenes.mjs";
import { writeInputs } from "./tables.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const TOLERANCE_STOPS = 1e-6;

/** @param {string} file */
function lossesIn(file) {
  const bytes = readFileSync(file);
  return new Float64Array(bytes.buffer, bytes.byteOffset, bytes.length / 8);
}

/** Greatest difference over the scenes that both worked out, stops. @param {Float64Array} a @param {Float64Array} b */
function apart(a, b) {
  const both = Math.min(a.length, b.length);
  if (both === 0) throw new Error("no losses to compare");
  return a.subarray(0, both).reduce((most, value, i) => Math.max(most, Math.abs(value - b[i])), 0);
}

/**
 * @param {{ scenes: number, matrixScenes: number, rounds: number }} size of the comparison; the matrix library is given fewer
 * scenes, since a scene costs the same in any number of them
 */
export function compareEngines({ scenes, matrixScenes, rounds }) {
  const folder = writeInputs(scenes);
  const script = (/** @type {string} */ name) => [process.execPath, join(here, `${name}.mjs`)];
  const ways = [
    { name: "product", command: script("fast"), count: scenes },
    { name: "plain formula", command: script("plain"), count: Math.min(scenes, matrixScenes * 4) },
    { name: "NumPy", command: ["python3", join(here, "attenuation.py"), folder], count: scenes },
    { name: "matrix library", command: script("matrix"), count: matrixScenes },
    { name: "multiply-add", command: script("multiply-add"), count: scenes },
  ];
  /** @type {Record<string, number[]>} */
  const perScene_us = Object.fromEntries(ways.map(({ name }) => [name, []]));
  /** @type {Record<string, string>} */
  const versions = {};
  for (let round = 0; round < rounds; round++) {
    for (const { name, command, count } of ways) {
      const out = round === 0 && name !== "multiply-add" ? [join(folder, name)] : [];
      const result = runJson(MEASURED_CORE, [...command, String(count), ...out], {
        mayFail: name === "NumPy",
      });
      if (result === undefined) continue;
      perScene_us[name].push((1e6 * result.seconds) / result.scenes);
      if (result.version !== undefined) versions[name] = result.version;
    }
  }
  const plain = lossesIn(join(folder, "plain formula"));
  const differences = Object.fromEntries(
    ways
      .filter(({ name }) => name !== "multiply-add" && perScene_us[name].length > 0)
      .map(({ name }) => [name, apart(plain, lossesIn(join(folder, name)))]),
  );
  rmSync(folder, { recursive: true });
  for (const [name, stops] of Object.entries(differences)) {
    if (!(stops <= TOLERANCE_STOPS)) throw new Error(`${name} is off by ${stops} stops`);
  }
  return {
    scenes,
    depths: DEPTHS,
    rounds,
    perScene_us,
    differences,
    versions,
    ratios: ratiosOf(perScene_us),
  };
}

/** Medians of the ratios within a round. @param {Record<string, number[]>} perScene_us */
function ratiosOf(perScene_us) {
  const own = perScene_us["product"];
  return Object.fromEntries(
    Object.entries(perScene_us)
      .filter(([name, times]) => name !== "product" && times.length > 0)
      .map(([name, times]) => [name, median(times.map((time, round) => time / own[round]))]),
  );
}

/** @param {{ sceneCounts: number[], depthCounts: number[], scenesPerDepthCount: number }} size */
export function growth({ sceneCounts, depthCounts, scenesPerDepthCount }) {
  const rows = runJson(MEASURED_CORE, [
    process.execPath,
    join(here, "growth.mjs"),
    JSON.stringify({ sceneCounts, depthCounts, scenesPerDepthCount }),
  ]);
  return {
    ...rows,
    sceneExponent: exponent(
      rows.byScenes.map((/** @type {{ scenes: number, seconds: number }} */ row) => ({
        x: row.scenes,
        y: row.seconds,
      })),
    ),
    depthExponent: exponent(
      rows.byDepths.map((/** @type {{ depths: number, seconds: number }} */ row) => ({
        x: row.depths,
        y: row.seconds,
      })),
    ),
  };
}
