import { type ComponentName, type JsonSchema, referenced, wireSchemas } from "@sunfathom/contract";
import type { Check } from "./check.js";
import { list } from "./check-list.js";
import { number } from "./check-number.js";
import { object } from "./check-object.js";
import { boolean, string } from "./check-text.js";

const checks = new Map<string, Check>();

/** The check of a component of the contract. */
export function checkOf(component: ComponentName): Check {
  return checkOfName(component);
}

function checkOfName(name: string): Check {
  const known = checks.get(name);
  if (known !== undefined) return known;
  const schema = Object.hasOwn(wireSchemas, name) ? wireSchemas[name as ComponentName] : undefined;
  if (schema === undefined) throw new Error(`The contract has no component ${name}.`);
  const check = compile(schema);
  checks.set(name, check);
  return check;
}

/**
 * Turns a schema into a function once, so that a request costs no reading of schemas.
 * @throws Error for a schema that it would not check in full
 */
export function compile(schema: JsonSchema): Check {
  if (schema.const !== undefined) throw new Error("Requests have no constants.");
  if (schema.$ref !== undefined) return checkOfName(referenced(schema.$ref));
  switch (schema.type) {
    case "object":
      return object(schema, compile);
    case "array":
      return list(schema, compile);
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
