// Mutation testing by folder or file, or several between commas: `MUTATE=services/api/src/http npm run mutate`. Breaks small things in
// the code, one at a time, and counts the breaks that no test notices. Slow, so by command, and incremental: reports/ remembers what is known.
// See https://stryker-mutator.io/docs/stryker-js/configuration/
import { createHash } from "node:crypto";

const places = (process.env["MUTATE"] ?? "services/api/src/http").split(",");
const [folder] = places;
const name =
  places.length === 1 ? folder.replaceAll("/", "-") : createHash("sha1").update(places.join()).digest("hex");

/** What must be noticed, in percent, by the beginning of the folder. Tables are left to checksums and replays. */
const thresholds = { "packages/optics": 90, "packages/planner": 85, "services/api": 80 };
const least = Object.entries(thresholds).find(([start]) => folder.startsWith(start))?.[1] ?? 80;

export default {
  mutate: [
    ...places.map((place) => (place.endsWith(".ts") ? place : `${place}/**/*.ts`)),
    "!**/*.test.ts",
    "!**/*.test-support.ts",
    "!**/data/**",
    "!**/generated/**",
    // With the slow clients, by its own name.
    ...(places.some((place) => place.endsWith("send-limit.ts")) ? [] : ["!**/send-limit.ts"]),
  ],
  testRunner: "vitest",
  vitest: { configFile: "test/mutation/vitest.config.mjs", related: false },
  plugins: ["@stryker-mutator/vitest-runner"],
  coverageAnalysis: "perTest",
  // What runs once, as a file is loaded, would need every test for every mutant.
  ignoreStatic: true,
  ignorePatterns: ["dist", "coverage", "reports"],
  incremental: true,
  incrementalFile: `reports/mutation/${name}.json`,
  reporters: ["clear-text", "progress-append-only"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  concurrency: Number(process.env["MUTATE_CONCURRENCY"] ?? 2),
  timeoutMS: 20_000,
  // Instrumented, and on a busy machine, the first run of all tests takes long.
  dryRunTimeoutMinutes: 30,
  thresholds: { high: least, low: least, break: least },
  tempDirName: "node_modules/.cache/stryker",
};
