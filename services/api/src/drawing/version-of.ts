import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

const require = createRequire(import.meta.url);

/** `name@version` of a package, also of one that does not give its package.json by name. */
export function versionOf(name: string, file = name): string {
  let folder = dirname(require.resolve(file));
  for (;;) {
    const manifest = join(folder, "package.json");
    if (existsSync(manifest)) {
      const { name: found, version } = JSON.parse(readFileSync(manifest, "utf8"));
      if (found === name) return `${name}@${version}`;
    }
    if (dirname(folder) === folder) throw new Error(`${name} has no package.json.`);
    folder = dirname(folder);
  }
}
