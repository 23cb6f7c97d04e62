import { fileURLToPath } from "node:url";
import { execute } from "./project.mjs";

const home = fileURLToPath(new URL("../../", import.meta.url));

/**
 * @param {string} name
 * @param {string} script of this package, which takes a tarball
 * @returns {import("../consumers.mjs").Check}
 */
function linter(name, script) {
  return {
    name,
    run: async ({ tarball }) => {
      await execute("npm", ["run", "--silent", script, "--", tarball], home);
      return "nothing to report";
    },
  };
}

export const linterChecks = [linter("publint", "lint:package"), linter("are the types wrong", "lint:types")];
