// The tests beside the folder's code; of a service all of its tests, most of which go through HTTP, and the hostile ones. Those of the whole
// house would take too long for every mutant.
import { mergeConfig } from "vitest/config";
import house from "../../vitest.config.js";

const folder = process.env["MUTATE"] ?? "services/api/src/http";
const [service] = /^services\/[^/]+\/src/.exec(folder) ?? [];

const config = mergeConfig(house, {});
config.test = {
  ...config.test,
  include:
    service === undefined
      ? [`${folder.replace(/\/[^/]+\.ts$/, "")}/**/*.test.ts`]
      : [`${service}/**/*.test.ts`, "test/hostile/{bodies,wire,slow-clients}.test.ts"],
  // Starts the built service, which no mutant is in.
  exclude: ["services/api/src/server.test.ts"],
  reporters: ["default"],
  // Instrumented code is slow.
  testTimeout: 600_000,
};
export default config;
