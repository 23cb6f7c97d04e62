// Measures everything that the page beside this file shows, and writes the page's figures anew.
// usage: node test/bench/run.mjs [--short]: a short run only proves that the benchmarks still run, and writes nothing.
import { mkdirSync, writeFileSync } from "node:fs";
import { compareEngines, growth } from "./engine/engine.mjs";
import { environment } from "./environment.mjs";
import { writePage } from "./page.mjs";
import { measurePictures } from "./pictures/pictures.mjs";
import { operations } from "./service/operations.mjs";
import { measureService, startUp } from "./service/service.mjs";
import { bundleSizes } from "./sizes.mjs";

const short = process.argv.includes("--short");
/** The two with a target are measured longest. */
const rounds = (/** @type {string} */ name) => (name === "attenuation" ? 7 : name === "dive-advice" ? 5 : 3);
/** Until everything is compiled that will be: the lightest calculation takes some ten thousand requests. */
const warmUp_s = (/** @type {string} */ name) => (name === "attenuation" ? 20 : 4);

const size = short
  ? {
      plan: [
        { operation: "attenuation", rounds: 1, seconds: 1, warmUp_s: 1 },
        { operation: "attenuation", rounds: 1, seconds: 1, warmUp_s: 1, get: true },
      ],
      latency_s: 1,
      starts: 1,
      engine: { scenes: 1000, matrixScenes: 100, rounds: 1 },
      growth: { sceneCounts: [100, 1000], depthCounts: [1, 30], scenesPerDepthCount: 200 },
      pictures: { rounds: 1, warmUps: 0 },
    }
  : {
      plan: [
        ...operations.map(({ name }) => ({
          operation: name,
          rounds: rounds(name),
          seconds: 2,
          warmUp_s: warmUp_s(name),
        })),
        { operation: "attenuation", rounds: 7, seconds: 2, warmUp_s: 4, get: true },
      ],
      latency_s: 10,
      starts: 5,
      engine: { scenes: 100_000, matrixScenes: 5000, rounds: 5 },
      growth: {
        sceneCounts: [100, 1000, 10_000, 100_000, 1_000_000],
        depthCounts: [1, 3, 10, 30, 100, 300],
        scenesPerDepthCount: 10_000,
      },
      pictures: { rounds: 7, warmUps: 4 },
    };

const say = (/** @type {string} */ text) => console.log(`[bench] ${text}`);

const results = { environment: environment() };
say("start-up");
const start = await startUp(size.starts);
say("service");
const service = await measureService(size.plan, { operation: "attenuation", seconds: size.latency_s });
say("engine");
const engine = compareEngines(size.engine);
if (engine.versions["NumPy"] === undefined) say("NumPy is not here: nothing is compared with it");
say("growth");
const grown = growth(size.growth);
say("pictures");
const pictures = measurePictures(size.pictures);
say("bundles");
const all = { ...results, start, service, engine, growth: grown, pictures, sizes: bundleSizes() };
if (short) say("all ran; a short run writes no figures");
else {
  const folder = new URL("results/", import.meta.url);
  mkdirSync(folder, { recursive: true });
  writeFileSync(new URL("latest.json", folder), `${JSON.stringify(all, null, 2)}\n`);
  writePage(all);
  say("wrote test/bench/results/latest.json and the figures of test/bench/README.md");
}
