import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { whatIsAsked } from "./asked.mjs";
import { execute, freshProject } from "./project.mjs";

/** What a page with one calculation may weigh, minified and compressed, in kB: as src/proof/size.test.ts has it. */
const ceilingKb = (/** @type {string} */ name) => (name === "diveAdvice" ? 69 : 60);

/** Of each calculation the first scene that it is asked. */
const firsts = whatIsAsked().filter(
  ({ group, name }, index, all) =>
    group === "calculations" && all.findIndex((other) => other.name === name) === index,
);

const rollup = `import { rollup } from "rollup";
import { nodeResolve } from "@rollup/plugin-node-resolve";
import terser from "@rollup/plugin-terser";
const [input, file] = process.argv.slice(2);
const bundle = await rollup({ input, plugins: [nodeResolve(), terser({ module: true })] });
await bundle.write({ file, format: "es" });
`;

const webpack = `import { basename, dirname } from "node:path";
import webpack from "webpack";
const [entry, file] = process.argv.slice(2);
const output = { path: dirname(file), filename: basename(file) };
webpack({ mode: "production", entry, output, performance: false }, (error, stats) => {
  if (error ?? stats.hasErrors()) throw error ?? new Error(stats.toString());
});
`;

/**
 * Bundles a page for each calculation, and holds it to its ceiling and to what the service answers.
 * @param {string} name
 * @param {string[]} packages
 * @param {(entry: string, file: string, project: string) => Promise<unknown>} pack
 * @returns {import("../consumers.mjs").Check}
 */
function bundler(name, packages, pack) {
  return {
    name: `a page for each calculation, by ${name}`,
    run: async (place) => {
      const project = await freshProject(place, name.split(" ").join("-"), packages);
      mkdirSync(join(project, "pages"));
      const sizes = [];
      for (const asked of firsts) {
        const [entry, file] = [join(project, `${asked.name}.mjs`), join(project, `pages/${asked.name}.mjs`)];
        writeFileSync(entry, page(asked.name));
        await pack(entry, file, project);
        const kb = gzipSync(readFileSync(file), { level: 9 }).length / 1000;
        if (kb > ceilingKb(asked.name)) throw new Error(`${asked.name} weighs ${kb} kB`);
        await compareWithService(place.baseUrl, file, asked);
        sizes.push(`${asked.name} ${kb.toFixed(1)}`);
      }
      return `${sizes.join(", ")} kB`;
    },
  };
}

/** @param {string} name of a calculation */
function page(name) {
  return `import { ${name}, offlineWith } from "@sunfathom/sdk/offline/parts";
globalThis.client = offlineWith([${name}]);
`;
}

/**
 * @param {string} baseUrl @param {string} file a page that leaves its client behind
 * @param {{ name: string, path: string, body: unknown }} asked
 */
async function compareWithService(baseUrl, file, { name, path, body }) {
  await import(pathToFileURL(file).href);
  const { client } = /** @type {{ client?: any }} */ (globalThis);
  const computed = JSON.stringify(await client.calculations[name](body));
  const headers = { "content-type": "application/json" };
  const response = await fetch(baseUrl + path, { method: "POST", headers, body: JSON.stringify(body) });
  if (computed !== (await response.text())) throw new Error(`${name} is not what the service answers`);
}

/** Runs a bundler by a program of its own. @param {string} program */
const by =
  (program) =>
  async (/** @type {string} */ entry, /** @type {string} */ file, /** @type {string} */ project) => {
    writeFileSync(join(project, "pack.mjs"), program);
    await execute(process.execPath, ["pack.mjs", entry, file], project);
  };

export const bundlerChecks = [
  bundler("esbuild", [], (entry, outfile) =>
    build({ entryPoints: [entry], outfile, bundle: true, minify: true, format: "esm", logLevel: "warning" }),
  ),
  bundler(
    "Rollup 4.68.8",
    ["rollup@4.68.8", "@rollup/plugin-node-resolve@16.0.3", "@rollup/plugin-terser@1.0.2"],
    by(rollup),
  ),
  bundler("webpack 5.112.2", ["webpack@5.112.2"], by(webpack)),
];
