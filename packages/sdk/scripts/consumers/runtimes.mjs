import { cpSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";
import { whatIsAsked } from "./asked.mjs";
import { execute, freshProject } from "./project.mjs";

const programs = fileURLToPath(new URL("programs/", import.meta.url));

/**
 * Lays the programs that every runtime runs, and what they ask.
 * @param {string} project
 */
export function layPrograms(project) {
  cpSync(programs, project, { recursive: true });
  writeFileSync(join(project, "asked.json"), JSON.stringify(whatIsAsked()));
}

/** The same program as one that requires the package. @param {string} project */
function layRequiring(project) {
  layPrograms(project);
  buildSync({
    entryPoints: [join(project, "digest.mjs")],
    outfile: join(project, "digest.cjs"),
    bundle: true,
    packages: "external",
    platform: "node",
    format: "cjs",
    logLevel: "warning",
  });
  writeFileSync(
    join(project, "print.cjs"),
    'require("./digest.cjs").digest(process.argv[2]).then(console.log);\n',
  );
}

/** @type {import("../consumers.mjs").Check} */
const requiring = {
  name: `Node ${process.versions.node}, required`,
  run: async (place) => {
    const project = await freshProject(place, "required", []);
    layRequiring(project);
    return compare(place, await execute(process.execPath, ["print.cjs", place.baseUrl], project));
  },
};

/**
 * @param {string} name
 * @param {string[]} packages that bring the runtime; each ships its binary in the registry
 * @param {(project: string) => [command: string, ...args: string[]]} command that runs a program
 * @returns {import("../consumers.mjs").Check}
 */
function runtime(name, packages, command) {
  return {
    name,
    run: async (place) => {
      const project = await freshProject(place, name.split(" ").join("-"), packages);
      layPrograms(project);
      const [program, ...args] = command(project);
      const found = await execute(program, [...args, "print.mjs", place.baseUrl], project);
      return compare(place, found);
    },
  };
}

/**
 * Holds what a runtime computed to what the first one did.
 * @param {import("../consumers.mjs").Place} place
 * @param {string} found
 */
export function compare(place, found) {
  place.expected ||= found;
  if (found !== place.expected)
    throw new Error(`computed ${found}, where the first one computed ${place.expected}`);
  return found;
}

const bin = (/** @type {string} */ name) => (/** @type {string} */ project) =>
  join(project, "node_modules/.bin", name);

/** @type {import("../consumers.mjs").Check[]} */
export const runtimeChecks = [
  runtime(`Node ${process.versions.node}`, [], () => [process.execPath]),
  requiring,
  runtime("Node 26.10.0", ["node@26.10.0"], (project) => [bin("node")(project)]),
  runtime("Deno 2.9.6", ["deno@2.9.6"], (project) => [bin("deno")(project), "run", "--allow-net=127.0.0.1"]),
  runtime("Bun 1.4.5", ["bun@1.4.5"], (project) => [bin("bun")(project)]),
];
