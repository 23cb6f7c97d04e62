import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";

export const home = fileURLToPath(new URL("../../", import.meta.url));

/** Bundles a program that imports this package by its name, as an integrator's bundler does. */
export async function bundle(program: string, minify: boolean): Promise<{ code: string; files: string[] }> {
  const { outputFiles, metafile } = await build({
    stdin: { contents: program, loader: "ts", resolveDir: home },
    bundle: true,
    minify,
    format: "esm",
    target: "es2022",
    conditions: ["source"],
    metafile: true,
    write: false,
    absWorkingDir: home,
  });
  return { code: outputFiles[0]?.text ?? "", files: Object.keys(metafile.inputs) };
}

/** Size of a text as most servers send it, in kB (1000 bytes). */
export function gzipKb(text: string): number {
  return gzipSync(text, { level: 9 }).length / 1000;
}
