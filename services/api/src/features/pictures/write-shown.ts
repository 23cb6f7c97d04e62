// Writes the pictures that README.md shows into docs/generated. Run by `npm run generate`.
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { fileOf, shown, shownNames } from "./shown.js";

for (const name of shownNames) {
  writeFileSync(fileOf(name), `${shown(name)}\n`);
  console.log(`Wrote ${fileURLToPath(fileOf(name))}`);
}
