// Writes src/generated/model-version.ts: a hash over the tables and code of optics and planner, tests left out.
// Run before every build (see .ci/setup.mjs); the file is not committed, since it follows from the sources.
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const packages = fileURLToPath(new URL("../..", import.meta.url));
const hash = createHash("sha256");
for (const name of ["optics", "planner"]) {
  const files = readdirSync(`${packages}${name}/src`, { recursive: true, encoding: "utf8" })
    .map((file) => file.replaceAll("\\", "/"))
    .filter(
      (file) =>
        file.endsWith(".ts") && !/\.test(-support)?\.ts$/.test(file) && !file.startsWith("generated/"),
    )
    .sort();
  for (const file of files) {
    hash.update(`${name}/${file}\n`);
    hash.update(readFileSync(`${packages}${name}/src/${file}`, "utf8").replaceAll("\r\n", "\n"));
  }
}
const text = `// Written by scripts/write-model-version.mjs; not committed.

/** Identifies the tables and formulas behind an answer: the start of a SHA-256 over their sources. */
export const MODEL_VERSION = "${hash.digest("hex").slice(0, 12)}";
`;
const target = `${packages}planner/src/generated/model-version.ts`;
mkdirSync(`${packages}planner/src/generated`, { recursive: true });
if (!existsSync(target) || readFileSync(target, "utf8") !== text) writeFileSync(target, text);
