import { components } from "../components.js";
import { componentSchemas } from "./convert.js";

/**
 * The text of `src/generated/described-schemas.ts`: the schemas with their descriptions and examples, so that a service that
 * describes itself need not load zod and convert them each time it starts.
 */
export function describedSchemasModule(): string {
  const lines = Object.entries(componentSchemas(components)).map(
    ([name, schema]) => `  ${name}: ${JSON.stringify(schema)},`,
  );
  return [
    "// Generated from the zod schemas by `npm run generate`. Never edit it.",
    'import type { JsonSchema } from "../json-schema/schema.js";',
    "",
    "export const describedSchemas: Readonly<Record<string, JsonSchema>> = {",
    ...lines,
    "};",
    "",
  ].join("\n");
}
