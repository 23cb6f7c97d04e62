import { mkdirSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { publishedManifest } from "../../scripts/pack/manifest.mjs";
import { packModules } from "../../scripts/pack/modules.mjs";

export const home = fileURLToPath(new URL("../../", import.meta.url));

/** How an integrator's bundler is set. @param from folder of the program: this package, or where `layPackage` has laid it */
const settings = (program: string, minify: boolean, from: string) => ({
  stdin: { contents: program, loader: "ts" as const, resolveDir: from },
  bundle: true,
  minify,
  format: "esm" as const,
  target: "es2022",
  conditions: ["source"],
  metafile: true as const,
  write: false as const,
  absWorkingDir: from,
});

/** Bundles a program that imports this package by its name into one file, as an integrator's bundler does. */
export async function bundle(
  program: string,
  minify: boolean,
  from = home,
): Promise<{ code: string; files: string[] }> {
  const { outputFiles, metafile } = await build(settings(program, minify, from));
  return { code: outputFiles[0]?.text ?? "", files: Object.keys(metafile.inputs) };
}

/** Files of a page, the first of which is what it starts with. */
export interface Page {
  /** What it needs before it runs. */
  start: { name: string; code: string }[];
  /** What it loads behind that where a scene may be refused. */
  later: { name: string; code: string }[];
  /** What it loads behind that where some scenes need more than others. */
  rest: { name: string; code: string }[];
  /** What it loads where a scene says more than most do. */
  wider: { name: string; code: string }[];
  /** What it loads of other languages, where somebody asks for one. */
  languages: { name: string; code: string }[];
}

/** The same into files that load one another, as bundlers do for a page. */
export async function pageOf(program: string, from: string): Promise<Page> {
  const { outputFiles, metafile } = await build({
    ...settings(program, true, from),
    splitting: true,
    outdir: "page",
  });
  const [entry = ""] =
    Object.entries(metafile.outputs).find(([, { entryPoint }]) => entryPoint === "<stdin>") ?? [];
  const neededBy = (first: string): Set<string> => {
    const needed = new Set([first]);
    // A set that grows while it is walked is walked to its end.
    for (const file of needed) {
      for (const { kind, path } of metafile.outputs[file]?.imports ?? [])
        if (kind === "import-statement") needed.add(path);
    }
    return needed;
  };
  const needed = neededBy(entry);
  const isEntry = (path: string, of: RegExp) => of.test(metafile.outputs[path]?.entryPoint ?? "");
  const isRest = (path: string) => isEntry(path, /[/\\]rest\.js$/);
  // A bundler writes a file for each import that it reads, also where it then leaves out who would load it.
  const everLoaded = new Set([entry]);
  for (const file of everLoaded)
    for (const { path } of metafile.outputs[file]?.imports ?? []) everLoaded.add(path);
  const written = Object.keys(metafile.outputs).filter((path) => everLoaded.has(path));
  const files = written.map((path) => ({
    path,
    name: basename(path),
    code: outputFiles.find((output) => basename(output.path) === basename(path))?.text ?? "",
  }));
  const start = files.filter(({ path }) => needed.has(path));
  const isLanguage = ({ path }: { path: string }) => isEntry(path, /[/\\]languages[/\\]/);
  const isWiderEntry = (path: string) => isEntry(path, /[/\\]wider[/\\]/);
  const widerEntries = files.filter(({ path }) => isWiderEntry(path));
  const widerFiles = new Set(widerEntries.flatMap(({ path }) => [...neededBy(path)]));
  const isWider = ({ path }: { path: string }) => widerFiles.has(path) && !needed.has(path);
  const behind = files.filter((file) => !needed.has(file.path) && !isLanguage(file) && !isWider(file));
  const entries = files.filter(
    ({ path }) => isEntry(path, /./) && path !== entry && !isRest(path) && !isWiderEntry(path),
  );
  const neededLater = new Set(entries.flatMap(({ path }) => [...neededBy(path)]));
  return {
    start: start.sort((a, b) => Number(b.path === entry) - Number(a.path === entry)),
    later: behind.filter(({ path }) => neededLater.has(path)),
    rest: behind.filter(({ path }) => !neededLater.has(path)),
    wider: files.filter(isWider),
    languages: files.filter(isLanguage),
  };
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
