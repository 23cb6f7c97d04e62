import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { whatIsAsked } from "./asked.mjs";
import { execute, freshProject } from "./project.mjs";

/** What a page with one calculation may weigh before it runs, minified and compressed, in kB: as src/proof/size.test.ts has it. */
const ceilingKb = 60;
/** A plan asks nearly all of them. */
const planCeilingKb = 66;

/** Of each calculation the first scene that it is asked. */
const firsts = whatIsAsked().filter(
  ({ group, name }, index, all) =>
    group === "calculations" && all.findIndex((other) => other.name === name) === index,
);

const rollup = `import { rollup } from "rollup";
import { nodeResolve } from "@rollup/plugin-node-resolve";
import terser from "@rollup/plugin-terser";
const [input, dir] = process.argv.slice(2);
const bundle = await rollup({ input, plugins: [nodeResolve(), terser({ module: true })] });
await bundle.write({ dir, format: "es", entryFileNames: "page.mjs", chunkFileNames: "[name].mjs" });
`;

const webpack = `import webpack from "webpack";
const [entry, path] = process.argv.slice(2);
const output = { path, filename: "page.mjs", chunkFilename: "[id].mjs", module: true };
const experiments = { outputModule: true };
webpack({ mode: "production", target: "es2022", entry, output, experiments, performance: false }, (error, stats) => {
  if (error ?? stats.hasErrors()) throw error ?? new Error(stats.toString());
});
`;

/**
 * Bundles a page for each calculation, and holds it to its ceiling and to what the service answers.
 * @param {string} name
 * @param {string[]} packages
 * @param {(entry: string, target: string, project: string) => Promise<unknown>} pack lays `page.mjs`, and what that loads, into `target`
 * @returns {import("../consumers.mjs").Check}
 */
function bundler(name, packages, pack) {
  return {
    name: `a page for each calculation, by ${name}`,
    run: async (place) => {
      const project = await freshProject(place, name.split(" ").join("-"), packages);
      const sizes = [];
      for (const asked of firsts) {
        const [entry, target] = [join(project, `${asked.name}.mjs`), join(project, "pages", asked.name)];
        writeFileSync(entry, page(asked.name));
        await pack(entry, target, project);
        const kb = startKb(target);
        if (kb > (asked.name === "diveAdvice" ? planCeilingKb : ceilingKb))
          throw new Error(`${asked.name} weighs ${kb} kB`);
        await compareWithService(place.baseUrl, join(target, "page.mjs"), asked);
        sizes.push(`${asked.name} ${kb.toFixed(1)}`);
      }
      return `${sizes.join(", ")} kB`;
    },
  };
}

/** What a page needs before it runs: its own file, and those that it does not load later. @param {string} folder */
function startKb(folder) {
  const needed = new Set(["page.mjs"]);
  let kb = 0;
  // A set that grows while it is walked is walked to its end.
  for (const name of needed) {
    const code = readFileSync(join(folder, name), "utf8");
    kb += gzipSync(code, { level: 9 }).length / 1000;
    for (const [, other] of code.matchAll(/\b(?:from|import)\s*"\.\/([^"]+)"/g)) if (other) needed.add(other);
  }
  return kb;
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
  const served = async (/** @type {unknown} */ scene) => {
    const headers = { "content-type": "application/json" };
    const response = await fetch(baseUrl + path, { method: "POST", headers, body: JSON.stringify(scene) });
    return response.text();
  };
  const computed = JSON.stringify(await client.calculations[name](body));
  if (computed !== (await served(body))) throw new Error(`${name} is not what the service answers`);
  // What it says of a scene that it refuses comes from a file that it loads later.
  const wrong = { dept_m: 12 };
  const { detail } = await client.calculations[name](wrong).catch((/** @type {any} */ error) => error);
  if (detail !== JSON.parse(await served(wrong)).detail) throw new Error(`${name} refused with ${detail}`);
}

/** Runs a bundler by a program of its own. @param {string} program */
const by =
  (program) =>
  async (/** @type {string} */ entry, /** @type {string} */ target, /** @type {string} */ project) => {
    writeFileSync(join(project, "pack.mjs"), program);
    await execute(process.execPath, ["pack.mjs", entry, target], project);
  };

export const bundlerChecks = [
  bundler("esbuild", [], (entry, outdir) =>
    build({
      entryPoints: { page: entry },
      outdir,
      outExtension: { ".js": ".mjs" },
      bundle: true,
      splitting: true,
      minify: true,
      format: "esm",
      logLevel: "warning",
    }),
  ),
  bundler(
    "Rollup 4.68.8",
    ["rollup@4.68.8", "@rollup/plugin-node-resolve@16.0.3", "@rollup/plugin-terser@1.0.2"],
    by(rollup),
  ),
  bundler("webpack 5.112.2", ["webpack@5.112.2"], by(webpack)),
];
