// The long proofs: what is true of everything tried, at a length that no change should wait for. A test that also has a short
// form is taken from its own file, which reads here how long it may be.
import { mergeConfig } from "vitest/config";
import house from "../../vitest.config.js";

const config = mergeConfig(house, {});
config.test = {
  ...config.test,
  projects: undefined,
  include: ["packages/*/src/**/*.prove.ts", "services/*/src/**/*.prove.ts", "test/**/*.prove.ts"],
  env: { PROVE: "on" },
  // One after the other: some measure what a service has left for others.
  fileParallelism: false,
  testTimeout: 10 * 3600 * 1000,
  // Says of every proof how long it took.
  slowTestThreshold: 0,
  reporters: ["verbose", ...config.test.reporters.filter((reporter) => reporter !== "default")],
};
export default config;
