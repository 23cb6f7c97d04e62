import type { JsonSchema } from "./schema.js";

const forReaders: ReadonlySet<string> = new Set(["description", "examples"]);

/** A schema without what only a human reader needs: what is left checks, orders and rounds values. */
export function compact(schema: JsonSchema): JsonSchema {
  const kept = Object.entries(schema).filter(([keyword]) => !forReaders.has(keyword));
  return {
    ...Object.fromEntries(kept),
    ...(schema.items === undefined ? {} : { items: compact(schema.items) }),
    ...(schema.properties === undefined
      ? {}
      : {
          properties: Object.fromEntries(
            Object.entries(schema.properties).map(([name, property]) => [name, compact(property)]),
          ),
        }),
  };
}
