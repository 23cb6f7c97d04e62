import { readdirSync, rmSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { directImports } from "./direct-imports.mjs";

const source = fileURLToPath(new URL("../../src/", import.meta.url));

/** Entries of the package, by the name of their file. */
const published = {
  index: join(source, "index.ts"),
  offline: join(source, "offline/index.ts"),
  "offline-parts": join(source, "offline/parts.ts"),
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
  };
  const { metafile } = await build({
    entryPoints,
    plugins: [directImports(Object.values(entryPoints))],
    outdir,
    bundle: true,
    // What several entries need stands once: an error thrown offline is an instance of the same class.
    splitting: true,
    chunkNames: "shared/[hash]",
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
  rmSync(join(outdir, "parts"), { recursive: true });
  return metafile;
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
