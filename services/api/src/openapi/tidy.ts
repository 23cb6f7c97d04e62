import { isObject, type Json } from "./json.js";

/**
 * Puts right what the writer of the description makes of it:
 * - a reference that was wrapped for its sake, and has no neighbours, stands alone again;
 * - the example of a parameter goes back into its schema, where a form that offers to try the operation does not take
 *   it for a value to send: all examples together are no scene.
 */
export function tidy(value: Json): Json {
  if (Array.isArray(value)) return value.map(tidy);
  if (!isObject(value)) return value;
  const object = Object.fromEntries(Object.entries(value).map(([key, item]) => [key, tidy(item)]));
  const { allOf } = object;
  if (Array.isArray(allOf) && allOf[0] !== undefined && Object.keys(object).length === 1) return allOf[0];
  const { in: place, example, schema, ...rest } = object;
  if (typeof place === "string" && example !== undefined && isObject(schema)) {
    return { ...rest, in: place, schema: { ...schema, examples: [example] } };
  }
  return object;
}
