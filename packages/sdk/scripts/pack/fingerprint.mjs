import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const home = fileURLToPath(new URL("../../", import.meta.url));
const build = join(home, "../answers/src/generated/build.ts");

/**
 * Names what a package is made of: the start of a SHA-256 over the sources of the client, what packs them, and the build of
 * the answers that the offline mode holds. Two packages with different contents never share a version.
 */
export function fingerprint() {
  const hash = createHash("sha256");
  const files = ["src", "scripts"].flatMap((folder) =>
    readdirSync(join(home, folder), { recursive: true, encoding: "utf8" })
      .filter((file) => /\.(ts|mjs)$/.test(file) && !/\.test(-support)?\.ts$/.test(file))
      .map((file) => join(home, folder, file)),
  );
  for (const file of [...files.sort(), join(home, "README.md"), join(home, "package.json"), build]) {
    hash.update(`${file.slice(home.length).replaceAll("\\", "/")}\n`);
    hash.update(readFileSync(file, "utf8").replaceAll("\r\n", "\n"));
  }
  return hash.digest("hex").slice(0, 10);
}
