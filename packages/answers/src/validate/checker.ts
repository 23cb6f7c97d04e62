import { type ComponentName, type JsonSchema, referenced, wireSchemas } from "@sunfathom/contract";
import type { Check } from "./check.js";
import { list } from "./check-list.js";
import { number } from "./check-number.js";
import { object } from "./check-object.js";
import { boolean, string } from "./check-text.js";

/** Checks by the schemas that they were made from, each made when it is first asked for. */
const made = new WeakMap<JsonSchema, Check>();

/** The check of a scene, by a schema that refers to no other. */
export function checkOfScene(schema: JsonSchema): Check {
  return checkBy(schema, compile);
}

/** The check of any component of the contract. Who checks nothing but scenes carries less. */
export function checkOf(component: ComponentName): Check {
  return checkBy(wireSchemas[component], compileReferring);
}

function checkBy(schema: JsonSchema, compiled: (schema: JsonSchema) => Check): Check {
  const check = made.get(schema) ?? compiled(schema);
  made.set(schema, check);
  return check;
}

/** As `compile`, where a schema may refer to components. */
export function compileReferring(schema: JsonSchema): Check {
  const { $ref } = schema;
  return $ref === undefined ? compile(schema, compileReferring) : checkOf(referenced($ref) as ComponentName);
}

/**
 * Turns a schema into a function once, so that a request costs no reading of schemas.
 * @param partly turns the schemas of its parts into functions
 * @throws Error for a schema that it would not check in full
 */
export function compile(schema: JsonSchema, partly = compile): Check {
  switch (schema.const === undefined ? schema.type : undefined) {
    case "object":
      return object(schema, (part) => partly(part));
    case "array":
      return list(schema, (part) => partly(part));
    case "string":
      return string(schema);
    case "boolean":
      return boolean;
    case "number":
    case "integer":
      return number(schema);
    default:
      throw new Error(`Nothing checks ${JSON.stringify(schema)}.`);
  }
}
