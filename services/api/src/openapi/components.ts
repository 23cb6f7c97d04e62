import type { JsonSchema } from "@sunfathom/contract";
import { waysOf } from "@sunfathom/contract/ways";
import { described } from "./described.js";
import { saidCodes } from "./said-codes.js";

/** Every component, as a schema that routes can share; its `$id` becomes its name in the description. */
export function sharedSchemas(): object[] {
  return Object.entries(described).map(([name, schema]) => ({
    $id: name,
    ...wrapped(listing(name, schema)),
    ...(name in waysOf ? { "x-ways": waysOf[name as keyof typeof waysOf] } : {}),
  }));
}

/** A component with all codes that there are as the examples of its codes, the one of its own examples first. */
function listing(name: string, schema: JsonSchema): JsonSchema {
  const properties = Object.entries(schema.properties ?? {}).map(
    ([field, property]): [string, JsonSchema] => {
      const codes = saidCodes[name]?.[field];
      if (codes === undefined) return [field, property];
      return [field, { ...property, examples: [...new Set([...(property.examples ?? []), ...codes])] }];
    },
  );
  return schema.properties === undefined ? schema : { ...schema, properties: Object.fromEntries(properties) };
}

/** A field of a component, as it stands in the description. */
export function fieldsOf(component: string): [string, JsonSchema][] {
  return Object.entries(described[component]?.properties ?? {});
}

export function schemaOf(component: string): JsonSchema {
  const schema = described[component];
  if (schema === undefined) throw new Error(`The contract has no component ${component}.`);
  return schema;
}

/** The writer of the description drops whatever stands beside a `$ref`; inside `allOf` it has no neighbours. */
function wrapped(schema: JsonSchema): object {
  const { $ref, items, properties, ...rest } = schema;
  return {
    ...rest,
    ...($ref === undefined ? {} : Object.keys(rest).length === 0 ? { $ref } : { allOf: [{ $ref }] }),
    ...(items === undefined ? {} : { items: wrapped(items) }),
    ...(properties === undefined
      ? {}
      : {
          properties: Object.fromEntries(
            Object.entries(properties).map(([name, property]) => [name, wrapped(property)]),
          ),
        }),
  };
}
