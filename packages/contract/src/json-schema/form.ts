import { type JsonSchema, referenced } from "./schema.js";

/**
 * What of a schema it takes to bring a value into the form in which it leaves: a number's decimals (`"number"` where it has
 * none to round to), the fields of an object in their order (a name that ends in `?` may be absent), the items of a list; of an object
 * that declares no field, `"open"`: it keeps what it has.
 */
export type Form = number | "number" | "text" | "flag" | "open" | readonly [Form] | FormFields;

export interface FormFields {
  readonly [name: string]: Form;
}

/**
 * The form of a schema.
 * @param named gives the form of a component that the schema refers to
 * @throws Error for a schema without a form
 */
export function formOf(schema: JsonSchema, named: (component: string) => Form): Form {
  if (schema.$ref !== undefined) return named(referenced(schema.$ref));
  switch (schema.type) {
    case "object":
      return fieldsOf(schema, named);
    case "array":
      if (schema.items === undefined) throw new Error("A list without a schema of its items has no form.");
      return [formOf(schema.items, named)];
    case "number":
    case "integer":
      return schema["x-decimals"] ?? "number";
    case "string":
      return "text";
    case "boolean":
      return "flag";
    default:
      throw new Error("A schema without a type has no form.");
  }
}

function fieldsOf({ properties = {}, required = [] }: JsonSchema, named: (component: string) => Form): Form {
  if (Object.keys(properties).length === 0) return "open";
  return Object.fromEntries(
    Object.entries(properties).map(([name, property]) => [
      required.includes(name) ? name : `${name}?`,
      formOf(property, named),
    ]),
  );
}
