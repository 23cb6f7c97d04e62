import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { publishedManifest } from "../../scripts/pack/manifest.mjs";
import { packModules } from "../../scripts/pack/modules.mjs";

export const home = fileURLToPath(new URL("../../", import.meta.url));

/**
 * Bundles a program that imports this package by its name, as an integrator's bundler does.
 * @param from folder of the program: this package, or where `layPackage` has laid it as it is published
 */
export async function bundle(
  program: string,
  minify: boolean,
  from = home,
): Promise<{ code: string; files: string[] }> {
  const { outputFiles, metafile } = await build({
    stdin: { contents: program, loader: "ts", resolveDir: from },
    bundle: true,
    minify,
    format: "esm",
    target: "es2022",
    conditions: ["source"],
    metafile: true,
    write: false,
    absWorkingDir: from,
  });
  return { code: outputFiles[0]?.text ?? "", files: Object.keys(metafile.inputs) };
}

/** Lays the modules of this package into a folder, as they are published: how they are cut decides what a bundler leaves out. */
export async function layPackage(folder: string): Promise<void> {
  const target = join(folder, "node_modules/@sunfathom/sdk");
  mkdirSync(target, { recursive: true });
  await packModules(join(target, "dist"));
  const manifest = publishedManifest({
    name: "@sunfathom/sdk",
    version: "0.0.0",
    description: "",
    license: "Apache-2.0",
  });
  writeFileSync(join(target, "package.json"), JSON.stringify(manifest));
}

/** Size of a text as most servers send it, in kB (1000 bytes). */
export function gzipKb(text: string): number {
  return gzipSync(text, { level: 9 }).length / 1000;
}
