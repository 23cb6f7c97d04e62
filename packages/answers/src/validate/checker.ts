import {
  type ComponentName,
  type JsonSchema,
  referenced,
  type SceneSchemas,
  wireSchemas,
} from "@sunfathom/contract";
import type { Check } from "./check.js";
import { list } from "./check-list.js";
import { number } from "./check-number.js";
import { object } from "./check-object.js";
import { boolean, string } from "./check-text.js";

/** Checks by the schemas that they were made from, each made when it is first asked for. */
const made = new WeakMap<JsonSchema, Check>();

/** The check of a scene. */
export function checkOfScene({ component, schemas }: SceneSchemas): Check {
  return checkIn(schemas, component);
}

/** The check of any component of the contract. Who checks nothing but scenes carries less. */
export function checkOf(component: ComponentName): Check {
  return checkIn(wireSchemas, component);
}

type Schemas = Readonly<Record<string, JsonSchema>>;

function checkIn(schemas: Schemas, name: string): Check {
  const schema = Object.hasOwn(schemas, name) ? schemas[name] : undefined;
  if (schema === undefined) throw new Error(`The contract has no component ${name}.`);
  const check = made.get(schema) ?? compile(schema, schemas);
  made.set(schema, check);
  return check;
}

/**
 * Turns a schema into a function once, so that a request costs no reading of schemas.
 * @param schemas that it may refer to
 * @throws Error for a schema that it would not check in full
 */
export function compile(schema: JsonSchema, schemas: Schemas = {}): Check {
  if (schema.const !== undefined) throw new Error("Requests have no constants.");
  if (schema.$ref !== undefined) return checkIn(schemas, referenced(schema.$ref));
  switch (schema.type) {
    case "object":
      return object(schema, (part) => compile(part, schemas));
    case "array":
      return list(schema, (part) => compile(part, schemas));
    case "string":
      return string(schema);
    case "boolean":
      return boolean;
    case "number":
    case "integer":
      return number(schema);
    default:
      throw new Error("A schema without a type checks nothing.");
  }
}
