import { components } from "../components.js";
import { compact } from "./compact.js";
import { componentSchemas } from "./convert.js";
import type { JsonSchema } from "./schema.js";

/**
 * The text of `src/generated/wire-schemas.ts`: the schemas as plain data, so that whoever only checks and rounds
 * values carries neither zod nor the converter.
 */
export function wireSchemasModule(): string {
  const schemas: Record<string, JsonSchema> = Object.fromEntries(
    Object.entries(componentSchemas(components)).map(([name, schema]) => [name, compact(schema)]),
  );
  const lines = Object.entries(schemas).map(([name, schema]) => `  ${name}: ${JSON.stringify(schema)},`);
  return [
    "// Generated from the zod schemas by `npm run generate`. Never edit it.",
    'import type { JsonSchema } from "../json-schema/schema.js";',
    "",
    `export type ComponentName = ${Object.keys(schemas)
      .map((name) => `"${name}"`)
      .join(" | ")};`,
    "",
    "export const wireSchemas: Readonly<Record<ComponentName, JsonSchema>> = {",
    ...lines,
    "};",
    "",
  ].join("\n");
}
