// Values that a schema of the description takes.
import fc from "fast-check";
import { plain, type Schema } from "./description.js";

type Value = fc.Arbitrary<unknown>;
export type Scene = Record<string, unknown>;

/** Lists are mostly short: a long one says little more and takes long to answer. */
const usualItems = 4;

export function valuesOf(raw: Schema): Value {
  const schema = plain(raw);
  if (schema.enum !== undefined) return fc.constantFrom(...schema.enum);
  switch (schema.type) {
    case "boolean":
      return fc.boolean();
    case "integer":
      return fc.integer({ min: bound(schema.minimum), max: bound(schema.maximum) });
    case "number":
      return numberOf(bound(schema.minimum), bound(schema.maximum));
    case "string":
      return textOf(schema);
    case "array":
      return listOf(schema);
    case "object":
      return objectOf(schema);
    default:
      throw new Error(`A field of type ${schema.type} is not known here.`);
  }
}

function bound(value: number | undefined): number {
  if (value === undefined) throw new Error("A number of a request has no bound.");
  return value;
}

/** Plain decimals, as people send them, any double, and the bounds. */
function numberOf(min: number, max: number): Value {
  return fc.oneof(
    {
      arbitrary: fc
        .double({ min, max, noNaN: true })
        .map((value) => within(Number(value.toPrecision(3)), min, max)),
      weight: 6,
    },
    { arbitrary: fc.double({ min, max, noNaN: true }), weight: 2 },
    { arbitrary: fc.constantFrom(min, max), weight: 1 },
  );
}

function within(value: number, min: number, max: number): number {
  return Math.min(max, Math.max(min, value));
}

function textOf({ pattern, examples = [], minLength = 0, maxLength = 64 }: Schema): Value {
  if (pattern !== undefined) {
    return fc.oneof(fc.constantFrom(...examples), fc.stringMatching(new RegExp(pattern)));
  }
  const text = fc.string({ unit: "binary", minLength, maxLength });
  return examples.length === 0 ? text : fc.oneof(fc.constantFrom(...examples), text);
}

function listOf({ items, minItems = 0, maxItems = usualItems }: Schema): Value {
  if (items === undefined) throw new Error("A list has no items.");
  const item = valuesOf(items);
  const short = fc.array(item, { minLength: minItems, maxLength: Math.min(maxItems, minItems + usualItems) });
  const full = fc.array(item, { minLength: maxItems, maxLength: maxItems });
  return fc.oneof({ arbitrary: short, weight: 40 }, { arbitrary: full, weight: maxItems > 100 ? 1 : 2 });
}

/** An object with all that it must have, and some of the rest. */
export function objectOf({ properties = {}, required = [] }: Schema, share = 4): fc.Arbitrary<Scene> {
  const fields = Object.entries(properties).map(([name, schema]) => {
    const value = valuesOf(schema);
    return required.includes(name)
      ? value.map((given) => [name, given] as const)
      : fc
          .tuple(fc.integer({ min: 1, max: share }), value)
          .map(([one, given]) => [name, one === share ? given : undefined] as const);
  });
  return fc
    .tuple(...fields)
    .map((entries) => Object.fromEntries(entries.filter(([, given]) => given !== undefined)));
}
