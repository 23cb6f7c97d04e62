import type { JsonSchema } from "@sunfathom/contract";
import { describedSchemas } from "@sunfathom/contract/described";

/** Every component, as a schema that routes can share; its `$id` becomes its name in the description. */
export function sharedSchemas(): object[] {
  return Object.entries(describedSchemas).map(([name, schema]) => ({ $id: name, ...wrapped(schema) }));
}

/** A field of a component, as it stands in the description. */
export function fieldsOf(component: string): [string, JsonSchema][] {
  return Object.entries(describedSchemas[component]?.properties ?? {});
}

export function schemaOf(component: string): JsonSchema {
  const schema = describedSchemas[component];
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
