import type { JsonSchema } from "./schema.js";

const forReaders: ReadonlySet<string> = new Set(["description", "examples"]);

/** An example tells a form better than the pattern does, to whoever missed it. */
const forReadersOf = ({ pattern }: JsonSchema) =>
  pattern === undefined ? forReaders : new Set(["description"]);

/** A schema without what only a human reader needs: what is left checks, orders and rounds values. */
export function compact(schema: JsonSchema): JsonSchema {
  const left = forReadersOf(schema);
  const kept = Object.entries(schema).filter(([keyword]) => !left.has(keyword));
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
