// Writes src/generated/wire-schemas.ts from the built zod schemas.
import { createHash } from "node:crypto";
import { writeFileSync } from "node:fs";
import { wireSchemasModule } from "../dist/json-schema/wire-schemas-module.js";

const digest = (text) => createHash("sha256").update(text).digest("hex").slice(0, 12);
const file = new URL("../src/generated/wire-schemas.ts", import.meta.url);
writeFileSync(file, wireSchemasModule(digest));
console.log(`Wrote ${file.pathname}`);
