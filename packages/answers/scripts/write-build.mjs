// Writes src/generated/build.ts: a hash over the code, tables and texts of all that decides the bytes of an answer, tests left out.
// Run before every build (see .ci/setup.mjs); the file is not committed, since it follows from the sources.
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const packages = fileURLToPath(new URL("../..", import.meta.url));
const written = "generated/build.ts";
const hash = createHash("sha256");
for (const name of ["optics", "planner", "contract", "words", "answers", "quiz", "pictures"]) {
  const files = readdirSync(`${packages}${name}/src`, { recursive: true, encoding: "utf8" })
    .map((file) => file.replaceAll("\\", "/"))
    .filter((file) => file.endsWith(".ts") && !/\.test(-support)?\.ts$/.test(file) && file !== written)
    .sort();
  for (const file of files) {
    hash.update(`${name}/${file}\n`);
    hash.update(readFileSync(`${packages}${name}/src/${file}`, "utf8").replaceAll("\r\n", "\n"));
  }
}
const text = `// Written by scripts/write-build.mjs; not committed.

/** Names the code and texts behind an answer's bytes: the start of a SHA-256 over their sources. */
export const BUILD = "${hash.digest("hex").slice(0, 12)}";
`;
const target = `${packages}answers/src/${written}`;
mkdirSync(`${packages}answers/src/generated`, { recursive: true });
if (!existsSync(target) || readFileSync(target, "utf8") !== text) writeFileSync(target, text);
