import { type JsonSchema, knownKeywords } from "./schema.js";

/**
 * Refuses a schema that says nothing, which is what the converter makes of what it does not know, and one that says
 * more than the readers of these schemas understand. Either would let values pass unchecked.
 * @param path of the schema, for the message
 * @throws Error
 */
export function guard(schema: JsonSchema, path: string): void {
  if (schema.type === undefined && schema.$ref === undefined) {
    throw new Error(`The schema of ${path} says nothing of the value.`);
  }
  const unknown = Object.keys(schema).find((keyword) => !knownKeywords.has(keyword));
  if (unknown !== undefined) throw new Error(`The schema of ${path} has an unknown keyword: ${unknown}.`);
  if (schema.type === "array" && schema.items === undefined) {
    throw new Error(`The schema of ${path} says nothing of its items.`);
  }
  if (schema.items !== undefined) guard(schema.items, `${path}/items`);
  for (const [name, property] of Object.entries(schema.properties ?? {})) guard(property, `${path}/${name}`);
}
