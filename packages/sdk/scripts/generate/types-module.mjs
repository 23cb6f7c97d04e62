import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { createClient } from "@hey-api/openapi-ts";
import { mark } from "./description.mjs";
import { withWays } from "./ways.mjs";

/**
 * The types of the description's components, with their descriptions, and thus units and ranges.
 * @param {import("./description.mjs").Description} description
 */
export async function typesModule({ document }) {
  const folder = mkdtempSync(join(tmpdir(), "sdk-types-"));
  try {
    // Components alone: operations are written by api-module.mjs, and examples are not typed.
    const { parameters } = document.components;
    // The type of some fields of an answer follows from their names (src/core/fields.ts).
    const schemas = Object.fromEntries(
      Object.entries(document.components.schemas).filter(([, schema]) => !("x-part-of" in schema)),
    );
    const input = join(folder, "components.json");
    writeFileSync(input, JSON.stringify({ ...document, paths: {}, components: { schemas, parameters } }));
    await createClient({
      // Without the dot it would be taken for the name of a registry's entry.
      input: `./${relative(process.cwd(), input)}`,
      output: { path: join(folder, "out"), entryFile: false },
      parser: {
        filters: {
          parameters: { exclude: ["/.*/"] },
          orphans: true,
          preserveOrder: true,
        },
      },
      plugins: ["@hey-api/typescript"],
      logs: { level: "silent", file: false },
    });
    const text = readFileSync(join(folder, "out", "types.gen.ts"), "utf8");
    return mark + withWays(tidy(text), document.components.schemas);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/**
 * Takes off what only a whole client needs, and lets a field that may be absent be `undefined`, which JSON leaves out:
 * under `exactOptionalPropertyTypes` a caller could not hand a value on that may be missing otherwise.
 * @param {string} text
 */
function tidy(text) {
  return text
    .replace(/^\/\/ This file is auto-generated.*\n+/, "")
    .replace(/export type ClientOptions = \{\n.*\n\};\n+/, "")
    .replace(/^(\s+\w+\?: )(.*);$/gm, "$1$2 | undefined;");
}
