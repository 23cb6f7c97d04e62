// The tests beside the code of the folder's package: those of the whole house would take too long for every mutant.
import { mergeConfig } from "vitest/config";
import house from "../../vitest.config.js";

const [group, name] = (process.env["MUTATE"] ?? "services/api/src/http").split("/");

const config = mergeConfig(house, {});
config.test = {
  ...config.test,
  include: [`${group}/${name}/src/**/*.test.ts`],
  // Starts the built service, which no mutant is in.
  exclude: ["services/api/src/server.test.ts"],
  reporters: ["default"],
};
export default config;
