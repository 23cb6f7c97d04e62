import type { JsonSchema } from "@sunfathom/contract";

/** Whether a value keeps a schema. */
export type Accepts = (value: unknown) => boolean;

/** Each made when it is first asked for. */
const made = new WeakMap<JsonSchema, Accepts>();

/**
 * Whether values keep a schema, and no more: `checkOfScene` says what is wrong with those that do not, and a test holds the two to
 * each other. A page that computes offline needs the answer before it starts, and the reasons hardly ever.
 * @throws Error for a schema that it would not check in full
 */
export function accepts(schema: JsonSchema): Accepts {
  const known = made.get(schema) ?? compiled(schema);
  made.set(schema, known);
  return known;
}

function compiled(schema: JsonSchema): Accepts {
  switch (schema.type) {
    case "object":
      return object(schema);
    case "array":
      return list(schema);
    case "string":
      return string(schema);
    case "boolean":
      return (value) => typeof value === "boolean";
    case "number":
    case "integer":
      return number(schema);
    default:
      throw new Error(`Nothing checks ${JSON.stringify(schema)}.`);
  }
}

function object({ properties = {}, required = [], additionalProperties }: JsonSchema): Accepts {
  // A map, so that no name finds what every object inherits.
  const parts = new Map(Object.entries(properties).map(([name, part]) => [name, accepts(part)]));
  const others = additionalProperties !== false;
  return (value) =>
    isObject(value) &&
    // A program that calls this without JSON may well leave a field undefined.
    Object.entries(value).every(
      ([name, item]) => item === undefined || (parts.get(name)?.(item) ?? others),
    ) &&
    required.every((name) => value[name] !== undefined);
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function list({ items = {}, minItems = 0, maxItems = Number.POSITIVE_INFINITY }: JsonSchema): Accepts {
  const item = accepts(items);
  return (value) =>
    Array.isArray(value) && value.length >= minItems && value.length <= maxItems && value.every(item);
}

function string({ enum: options, minLength = 0, maxLength, pattern = "" }: JsonSchema): Accepts {
  const form = new RegExp(pattern, "u");
  return options === undefined
    ? (value) => typeof value === "string" && hasLength(value, minLength, maxLength) && form.test(value)
    : (value) => typeof value === "string" && options.includes(value);
}

/** In characters, as JSON Schema counts them, not halves of surrogate pairs. */
function hasLength(text: string, least: number, most = Number.POSITIVE_INFINITY): boolean {
  let count = 0;
  for (const _ of text) count += 1;
  return count >= least && count <= most;
}

function number({
  type,
  minimum = Number.NEGATIVE_INFINITY,
  maximum = Number.POSITIVE_INFINITY,
}: JsonSchema): Accepts {
  const isOne = type === "integer" ? Number.isInteger : Number.isFinite;
  return (value) => typeof value === "number" && isOne(value) && value >= minimum && value <= maximum;
}
