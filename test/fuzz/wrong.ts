// Ways to make a scene wrong in one place, each with the place.
import fc from "fast-check";
import type { Scene } from "./arbitrary.js";
import { plain, type Schema } from "./description.js";

export interface Wrong {
  /** JSON pointer to what was made wrong. */
  pointer: string;
  value: unknown;
}

/** What stands at a pointer whose schema is known. */
interface Place {
  pointer: string;
  path: (string | number)[];
  schema: Schema;
}

/** Every value in `value`, itself first, with its schema. */
function placesIn(value: unknown, raw: Schema, path: (string | number)[] = []): Place[] {
  const schema = plain(raw);
  const pointer = path.map((step) => `/${step}`).join("");
  const own = { pointer, path, schema };
  if (Array.isArray(value) && schema.items !== undefined) {
    const { items } = schema;
    // What holds for the first and last entry holds for those between.
    const ends = [...new Set([0, value.length - 1])].filter((index) => index in value);
    return [own, ...ends.flatMap((index) => placesIn(value[index], items, [...path, index]))];
  }
  if (typeof value !== "object" || value === null) return [own];
  const { properties = {} } = schema;
  return [
    own,
    ...Object.entries(value).flatMap(([name, item]) => {
      const property = properties[name];
      return property === undefined ? [] : placesIn(item, property, [...path, name]);
    }),
  ];
}

/** A copy of `value` with `replacement` at `path`. */
function replaced(value: unknown, [step, ...rest]: (string | number)[], replacement: unknown): unknown {
  if (step === undefined) return replacement;
  if (Array.isArray(value))
    return value.map((item, index) => (index === step ? replaced(item, rest, replacement) : item));
  const object = value as Scene;
  return { ...object, [step]: replaced(object[step], rest, replacement) };
}

/** The doubles on both sides of `value`. */
export function neighbours(value: number): [number, number] {
  if (value === 0) return [-Number.MIN_VALUE, Number.MIN_VALUE];
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, Math.abs(value));
  const bits = view.getBigInt64(0);
  view.setBigInt64(0, bits + 1n);
  const outer = view.getFloat64(0);
  view.setBigInt64(0, bits - 1n);
  const inner = view.getFloat64(0);
  return value > 0 ? [inner, outer] : [-outer, -inner];
}

/** Wrong values for a place, given what is right there. */
function wrongValues(schema: Schema, right: unknown): unknown[] {
  const others: unknown[] = [null, true, 7, "7", [], {}, [7]];
  const fits = (value: unknown) => value !== null && jsonType(value) === jsonType(right);
  const ofOtherType = others.filter((value) => !fits(value));
  const { enum: words } = schema;
  if (words !== undefined) {
    const word = String(words[0]);
    const written = [
      ...ofOtherType,
      "",
      ` ${word}`,
      `${word} `,
      `${word}\u0000`,
      word.toLowerCase() === word ? word.toUpperCase() : word.toLowerCase(),
      "\ud800",
      "__proto__",
    ];
    // A word without letters, such as a version, has no other case.
    return written.filter((value) => !words.includes(value));
  }
  switch (schema.type) {
    case "integer":
    case "number": {
      const { minimum = 0, maximum = 0 } = schema;
      const outside = [neighbours(minimum)[0], neighbours(maximum)[1], -1e308, 1e308, -Number.MAX_VALUE];
      return [
        ...ofOtherType,
        ...outside,
        ...(schema.type === "integer" ? [minimum + 0.5, maximum - 1e-9] : []),
      ];
    }
    case "string": {
      const { minLength = 0, maxLength, pattern } = schema;
      return [
        ...ofOtherType,
        ...(minLength > 0 ? [""] : []),
        ...(maxLength === undefined ? [] : ["x".repeat(maxLength + 1), "\u{1F30A}".repeat(maxLength + 1)]),
        ...(pattern === undefined ? [] : ["", "x", `${String(right)} `, `${String(right)}\n`, "\ud800"]),
      ];
    }
    case "array": {
      const { minItems = 0, maxItems } = schema;
      const list = Array.isArray(right) && right.length > 0 ? right : [];
      return [
        ...ofOtherType,
        ...(minItems > 0 ? [list.slice(0, minItems - 1)] : []),
        ...(maxItems === undefined || list.length === 0
          ? []
          : [Array.from({ length: maxItems + 1 }, (_, index) => list[index % list.length])]),
      ];
    }
    default:
      return ofOtherType;
  }
}

function jsonType(value: unknown): string {
  return Array.isArray(value) ? "array" : value === null ? "null" : typeof value;
}

/** A copy of a right scene that is wrong in one place. */
export function wrongScene(scene: Scene, schema: Schema): fc.Arbitrary<Wrong> {
  const ways = placesIn(scene, schema).flatMap((place) => {
    const right = place.path.reduce<unknown>((value, step) => (value as Scene)[step], scene);
    return [...wrongValuesAt(place, right), ...wrongNamesAt(place, right)];
  });
  return fc
    .constantFrom(...ways)
    .map(({ pointer, path, value }) => ({ pointer, value: replaced(scene, path, value) }));
}

interface Way extends Wrong {
  path: (string | number)[];
}

function wrongValuesAt({ pointer, path, schema }: Place, right: unknown): Way[] {
  return wrongValues(schema, right).map((value) => ({ pointer, path, value }));
}

/** Names that an object does not have, and names that it must have left out. */
function wrongNamesAt({ pointer, path, schema }: Place, right: unknown): Way[] {
  if (schema.type !== "object") return [];
  const object = right as Scene;
  const { properties = {}, required = [] } = schema;
  // Of an object that names no field, nobody can tell which do not belong.
  if (Object.keys(properties).length === 0) return [];
  const near = Object.keys(object).map((name) => `${name}s`);
  const strangers = ["x", "", "a/b~c", "constructor", "toString", "\u0000", "\ud83c", ...near];
  return [
    ...strangers
      .filter((name) => !Object.hasOwn(properties, name))
      .map((name) => ({
        pointer: `${pointer}/${name.replaceAll("~", "~0").replaceAll("/", "~1")}`,
        path,
        value: { ...object, [name]: 7 },
      })),
    ...required.map((name) => ({
      pointer: `${pointer}/${name}`,
      path,
      value: Object.fromEntries(Object.entries(object).filter(([key]) => key !== name)),
    })),
  ];
}
