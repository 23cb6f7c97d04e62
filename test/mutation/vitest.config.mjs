// Of one file with a test of its own, that test. Of a folder the tests beside its code; of a service also those of its routes and the hostile ones, which reach it through
// HTTP. Those of the whole house would take too long for every mutant, and the slow clients are for what limits sending alone.
import { existsSync } from "node:fs";
import { mergeConfig } from "vitest/config";
import house from "../../vitest.config.js";

const places = (process.env["MUTATE"] ?? "services/api/src/http").split(",");

function testsOf(place) {
  const own = place.replace(/\.ts$/, ".test.ts");
  if (place.endsWith(".ts") && existsSync(own)) return [own];
  const [service] = /^services\/[^/]+\/src/.exec(place) ?? [];
  return [
    `${place.replace(/\/[^/]+\.ts$/, "")}/**/*.test.ts`,
    ...(service === undefined ? [] : [`${service}/routes/*.test.ts`, "test/hostile/{bodies,wire}.test.ts"]),
    ...(place.endsWith("send-limit.ts") ? ["test/hostile/slow-clients.test.ts"] : []),
  ];
}

const config = mergeConfig(house, {});
config.test = {
  ...config.test,
  projects: undefined,
  include: [...new Set(places.flatMap(testsOf))],
  // Starts the built service, which no mutant is in.
  exclude: ["services/api/src/server.test.ts"],
  reporters: ["default"],
  // Instrumented code is slow.
  testTimeout: 600_000,
};
export default config;
