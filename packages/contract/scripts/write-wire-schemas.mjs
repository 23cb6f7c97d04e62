// Writes src/generated from the built zod schemas.
import { writeFileSync } from "node:fs";
import { computedModule, mountedOnModule } from "../dist/json-schema/computed-module.js";
import { describedSchemasModule } from "../dist/json-schema/described-schemas-module.js";
import { wireSchemasModule } from "../dist/json-schema/wire-schemas-module.js";

const files = {
  "wire-schemas.ts": wireSchemasModule(),
  "described-schemas.ts": describedSchemasModule(),
  "computed.ts": computedModule(),
  "mounted-on.ts": mountedOnModule(),
};
for (const [name, text] of Object.entries(files)) {
  const file = new URL(`../src/generated/${name}`, import.meta.url);
  writeFileSync(file, text);
  console.log(`Wrote ${file.pathname}`);
}
