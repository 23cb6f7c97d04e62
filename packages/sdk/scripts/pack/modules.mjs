import { readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { directImports, programOf } from "./direct-imports.mjs";
import { seldomApart, seldomOfPlans } from "./seldom.mjs";

const source = fileURLToPath(new URL("../../src/", import.meta.url));

/** Entries of the package, by the name of their file. */
const published = {
  index: join(source, "index.ts"),
  offline: join(source, "offline/index.ts"),
  "offline-batches": join(source, "offline/batches.ts"),
  "offline-parts": join(source, "offline/parts.ts"),
  "offline-pictures": join(source, "offline/pictures.ts"),
};

/**
 * Writes the package's modules. In the workspace the offline entries import their neighbours; published, they hold them, and
 * the package depends on nothing.
 * @param {string} outdir
 * @returns {Promise<import("esbuild").Metafile>}
 */
export async function packModules(outdir) {
  const entryPoints = {
    ...entriesIn("parts", "offline/generated/parts"),
    ...entriesIn("languages", "offline/languages"),
    ...published,
    rest: join(source, "offline/rest.ts"),
    // A file of its own, or who asks for a little of it is taken to need all that is beside it.
    seldom: join(source, "offline/seldom.ts"),
    "seldom-in-plans": join(source, "offline/seldom-in-plans.ts"),
  };
  const started = await packed(entryPoints, "shared", outdir, seldomApart);
  rmSync(join(outdir, "parts"), { recursive: true });
  const further = await packed(entriesIn("wider", "offline/wider"), "wider/shared", outdir, seldomApart);
  const inPlans = await packed(entriesIn("plans", "offline/plans"), "plans/shared", outdir, seldomOfPlans);
  const drawn = await packed(
    { "drawn/drawing": join(source, "offline/drawn/drawing.ts") },
    "drawn",
    outdir,
    wholly,
  );
  withoutIdleImports(outdir);
  return {
    inputs: { ...started.inputs, ...further.inputs, ...inPlans.inputs, ...drawn.inputs },
    outputs: { ...started.outputs, ...further.outputs, ...inPlans.outputs, ...drawn.outputs },
  };
}

/**
 * @param {Record<string, string>} entryPoints @param {string} shared folder of what several of them need @param {string} outdir
 * @param {typeof seldomApart} seldom who sets apart, or puts in its place, what only some scenes need
 */
async function packed(entryPoints, shared, outdir, seldom) {
  // All of it: what is put in the place of an entry is imported by others alone.
  const program = programOf([...Object.values(published), ...Object.values(entryPoints)]);
  const { metafile } = await build({
    entryPoints,
    plugins: [loadedOnDemand, seldom(program), directImports(program)],
    outdir,
    bundle: true,
    // What several entries need stands once: an error thrown offline is an instance of the same class.
    splitting: true,
    chunkNames: `${shared}/[hash]`,
    format: "esm",
    platform: "neutral",
    mainFields: ["module", "main"],
    conditions: ["source"],
    target: "es2022",
    // Names stay: whoever debugs through the package can read it, and bundlers minify on their own.
    minifySyntax: true,
    legalComments: "eof",
    metafile: true,
    logLevel: "warning",
  });
  return metafile;
}

/**
 * What answers scenes that ask for more than most do is packed apart, and has its own copy of the little that it shares with the rest:
 * bundlers that cut a page into files would keep what is shared in what every page starts with, whatever it asks for.
 * @type {import("esbuild").Plugin}
 */
const loadedOnDemand = {
  name: "loaded-on-demand",
  setup({ onResolve }) {
    onResolve({ filter: /\/(wider|plans)\// }, ({ path, kind }) =>
      kind === "dynamic-import"
        ? { path: `../${basename(dirname(path))}/${basename(path)}`, external: true }
        : undefined,
    );
    // One entry alone draws, and asks for it itself.
    onResolve({ filter: /^\.\/drawn\// }, ({ path, kind }) =>
      kind === "dynamic-import" ? { path, external: true } : undefined,
    );
  },
};

/** Sets nothing apart: whoever draws is loaded on demand as a whole. @type {typeof seldomApart} */
const wholly = () => ({ name: "wholly", setup() {} });

/**
 * The packer has each entry import all that belongs to it, in the order in which it would run. Nothing here does anything by being
 * imported, and bundlers would count what such a line names among what a page starts with.
 * @param {string} folder
 */
function withoutIdleImports(folder) {
  for (const name of readdirSync(folder, { recursive: true, encoding: "utf8" })) {
    if (!name.endsWith(".js")) continue;
    const file = join(folder, name);
    writeFileSync(file, readFileSync(file, "utf8").replace(/^import "[^"]+";\n/gm, ""));
  }
}

/**
 * Each part of the offline mode is an entry to the packer, so that what only some of them need stands in files of its own: a
 * bundler leaves these out with the parts that nobody asks for. The entries themselves only hand on, and are not published. Each
 * language is one, too: a file of its own, which those load who ask for it.
 * @param {string} name @param {string} from
 */
function entriesIn(name, from) {
  const folder = join(source, from);
  return Object.fromEntries(
    readdirSync(folder).map((file) => [`${name}/${basename(file, ".ts")}`, join(folder, file)]),
  );
}
