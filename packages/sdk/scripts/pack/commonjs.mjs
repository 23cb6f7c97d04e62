import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { transformSync } from "esbuild";

/**
 * Writes the packed modules once more for callers that `require` them, each from the one that stands for it: what entries share
 * is shared here, too. Declarations are the same text, which a compiler reads as those of CommonJS by the folder's manifest.
 * @param {string} modules folder of the packed modules and declarations
 */
export function packCommonJs(modules) {
  const names = readdirSync(modules, { recursive: true, encoding: "utf8" });
  const target = join(modules, "cjs");
  for (const name of names.filter((file) => /\.(js|d\.ts)$/.test(file))) {
    const file = join(target, name);
    mkdirSync(dirname(file), { recursive: true });
    if (name.endsWith(".d.ts")) cpSync(join(modules, name), file);
    else writeFileSync(file, required(readFileSync(join(modules, name), "utf8")));
  }
  writeFileSync(join(target, "package.json"), `${JSON.stringify({ type: "commonjs" })}\n`);
}

/** @param {string} text of a module */
function required(text) {
  return transformSync(text, { format: "cjs", platform: "node", target: "es2022", logLevel: "warning" }).code;
}
