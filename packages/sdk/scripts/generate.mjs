// Writes src/generated from ../../openapi/openapi.json. Run by `npm run generate`; with --check it
// writes nothing and fails where what is there differs.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { apiModule } from "./generate/api-module.mjs";
import { readDescription } from "./generate/description.mjs";
import { problemsModule, problemTableModule } from "./generate/problems-module.mjs";
import { typesModule } from "./generate/types-module.mjs";
import { versionModule } from "./generate/version-module.mjs";

const folder = new URL("../src/generated/", import.meta.url);
const description = readDescription();

const files = {
  "api.ts": apiModule(description),
  "problems.ts": problemsModule(description),
  "problem-table.ts": problemTableModule(description),
  "types.ts": await typesModule(description),
  "version.ts": versionModule(description),
};

/** @param {string} name */
const existing = (name) => {
  const file = new URL(name, folder);
  return existsSync(file) ? readFileSync(file, "utf8") : undefined;
};
const strange = existsSync(folder) ? readdirSync(folder).filter((name) => !(name in files)) : [];

if (process.argv.includes("--check")) {
  const differing = Object.entries(files).filter(([name, text]) => existing(name) !== text);
  const names = [...differing.map(([name]) => name), ...strange];
  if (names.length > 0) {
    console.error(`Differs from the description: ${names.join(", ")}. Run \`npm run generate\`.`);
    process.exit(1);
  }
  console.log("The generated part is what the description says.");
} else {
  mkdirSync(folder, { recursive: true });
  for (const name of strange) rmSync(new URL(name, folder));
  for (const [name, text] of Object.entries(files)) writeFileSync(new URL(name, folder), text);
  console.log(`Wrote ${Object.keys(files).join(", ")}.`);
}
