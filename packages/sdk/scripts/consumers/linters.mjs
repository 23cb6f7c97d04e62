import { fileURLToPath } from "node:url";
import { execute } from "./project.mjs";

const bin = (/** @type {string} */ name) =>
  fileURLToPath(new URL(`../../node_modules/.bin/${name}`, import.meta.url));

/** @type {import("../consumers.mjs").Check[]} */
export const linterChecks = [
  {
    name: "publint",
    run: async ({ tarball, folder }) => {
      await execute(bin("publint"), ["run", tarball, "--strict"], folder);
      return "nothing to report";
    },
  },
  {
    name: "are the types wrong",
    run: async ({ tarball, folder }) => {
      await execute(bin("attw"), [tarball, "--profile", "esm-only", "--no-emoji", "--no-color"], folder);
      return "nothing to report";
    },
  },
];
