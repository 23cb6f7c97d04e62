// The built service as the next version of the model would be: a copy of what is built in which the version, the build and a table differ.
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));
const packages = ["answers", "contract", "optics", "pictures", "planner", "quiz", "words"];
/** Of the service, what it runs with. */
const parts = ["dist", "docs", "pages", "client", "package.json", "node_modules"];

export const nextVersion = "2999.1.1";

/** @returns its top, and what takes it away */
export function buildNextModel(): { root: string; remove: () => void } {
  const copy = mkdtempSync(join(tmpdir(), "next-model-"));
  // Links lead from package to package within the copy, and to everybody else's packages where those are.
  symlinkSync(join(root, "node_modules"), join(copy, "node_modules"));
  const take = (folder: string, part: string) => {
    mkdirSync(join(copy, folder), { recursive: true });
    cpSync(join(root, folder, part), join(copy, folder, part), { recursive: true, verbatimSymlinks: true });
  };
  for (const name of packages)
    for (const part of ["dist", "package.json", "node_modules"]) take(`packages/${name}`, part);
  for (const part of parts) take("services/api", part);

  const change = (file: string, from: RegExp, to: string) => {
    const text = readFileSync(join(root, file), "utf8");
    const changed = text.replace(from, to);
    if (changed === text) throw new Error(`${file} has nothing like ${from}.`);
    writeFileSync(join(copy, file), changed);
  };
  change("packages/planner/dist/model-version.js", /(MODEL_VERSION = )"[^"]+"/, `$1"${nextVersion}"`);
  change("packages/answers/dist/generated/build.js", /(BUILD = )"[^"]+"/, '$1"000000000000"');
  // Water that absorbs a twentieth more: most figures move a little.
  const heavier =
    "for (const at of POPE_FRY_1997.absorption_per_m.keys()) POPE_FRY_1997.absorption_per_m[at] *= 1.05;\n";
  change("packages/optics/dist/data/pope-fry-1997.js", /$/, `\n${heavier}`);
  return { root: copy, remove: () => rmSync(copy, { recursive: true }) };
}
