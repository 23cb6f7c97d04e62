// How long a paper takes beside a plain loop over the planner, and what a package takes in memory. Run after a build:
//   node packages/quiz/scripts/bench.mjs
import { attenuation } from "@sunfathom/planner";
import { itemsFor, LEVELS, packageZip } from "@sunfathom/quiz";

const ROUNDS = 7;
const COUNT = 100;
const scene = {
  water_type: "II",
  daylight_basis: "sun",
  sun_elevation_deg: 50,
  cloud_oktas: 0,
  wind_speed_m_s: 4,
  subject_distance_m: 1,
  subject_facing: "camera",
  lamps: [],
  min_iso: 200,
  max_iso: 3200,
  min_f_number: 2.8,
  max_f_number: 16,
  shutter_s: 0.02,
  bits: 8,
  white_balance_min_cct_K: 2500,
  white_balance_max_cct_K: 10000,
  white_balance_max_duv: 0.03,
  filter_change_underwater: "none",
};

const ms = (run) => {
  const start = performance.now();
  run();
  return performance.now() - start;
};
const median = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)];
const paper = (level, seed, count = COUNT) =>
  itemsFor({ seed: String(seed), level, count, units: "metric", language: "en" });

for (const level of LEVELS)
  console.log(`first ${COUNT} questions, ${level}: ${ms(() => paper(level, "first")).toFixed(0)} ms`);

const papers = [];
const loops = [];
for (let round = 0; round < ROUNDS; round++) {
  for (const level of LEVELS) papers.push(ms(() => paper(level, round)));
  loops.push(
    ms(() => {
      for (let i = 0; i < COUNT; i++)
        attenuation({ ...scene, min_depth_m: 5 + i / 10, max_depth_m: 5 + i / 10 });
    }),
  );
}
console.log(
  `${COUNT} questions, later: median ${median(papers).toFixed(0)} ms, most ${Math.max(...papers).toFixed(0)} ms`,
);
console.log(`${COUNT} times attenuation at one depth: median ${median(loops).toFixed(0)} ms`);

const items = paper("working", "package", 200);
globalThis.gc?.();
const before = process.memoryUsage().rss;
let bytes = 0;
const took = ms(() => {
  for (const chunk of packageZip(items, {
    version: "3.0",
    language: "en",
    title: "Underwater colour",
    keys: true,
  }))
    bytes += chunk.length;
});
const grown = (process.memoryUsage().rss - before) / 1e6;
console.log(
  `package of 200: ${took.toFixed(0)} ms, ${(bytes / 1e3).toFixed(0)} kB, memory grown by ${grown.toFixed(0)} MB to ${(process.memoryUsage().rss / 1e6).toFixed(0)} MB`,
);
