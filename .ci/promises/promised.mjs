// What the description promises to those who have written a client: operations, what they take and what they give, without the
// texts. An operation that `x-preview` marks promises nothing yet, nor does what it alone refers to.

/**
 * @typedef {{
 *   ref?: string, type?: unknown, enum?: unknown[], const?: unknown, pattern?: string, format?: string,
 *   minimum?: number, maximum?: number, minLength?: number, maxLength?: number, minItems?: number, maxItems?: number,
 *   required?: string[], closed?: boolean, items?: Schema, anyOf?: Schema[], properties?: Record<string, Schema>,
 * }} Schema
 */
/** @typedef {{ takes: string[], needs: string[], body?: Schema, gives: Record<string, Record<string, Schema>> }} Operation */
/** @typedef {{ operations: Record<string, Operation>, parameters: Record<string, Schema>, taken: Record<string, Schema>, given: Record<string, Schema> }} Promises */

/** Words of a schema that a program can come to rely on. */
const binding = [
  "type",
  "enum",
  "const",
  "pattern",
  "format",
  "minimum",
  "maximum",
  "minLength",
  "maxLength",
];
const bindingLists = ["minItems", "maxItems", "required"];

/** @param {any} description as OpenAPI has it @returns {Promises} */
export function promised(description) {
  const { schemas = {}, parameters = {}, responses = {} } = description.components;
  /** @param {any} part @param {Record<string, any>} home */
  const resolved = (part, home) => (part.$ref === undefined ? part : home[part.$ref.split("/").at(-1)]);
  /** @type {Promises} */
  const promises = { operations: {}, parameters: {}, taken: {}, given: {} };
  for (const [path, methods] of Object.entries(description.paths)) {
    for (const [method, operation] of Object.entries(methods)) {
      if (operation["x-preview"] === true) continue;
      const asked = (operation.parameters ?? []).map((/** @type {any} */ one) => resolved(one, parameters));
      for (const one of asked) promises.parameters[called(one)] = bare(one.schema ?? {});
      const given = Object.entries(operation.responses).map(([status, response]) => [
        status,
        contents(resolved(response, responses)),
      ]);
      const [body] = Object.values(contents(operation.requestBody ?? {}));
      promises.operations[`${method.toUpperCase()} ${path}`] = {
        takes: asked.map(called),
        needs: asked.filter((/** @type {any} */ one) => one.required).map(called),
        ...(body === undefined ? {} : { body }),
        gives: Object.fromEntries(given),
      };
    }
  }
  for (const schema of Object.values(promises.parameters)) reach(schema, promises.taken);
  for (const { body, gives } of Object.values(promises.operations)) {
    if (body) reach(body, promises.taken);
    for (const schema of Object.values(gives).flatMap((one) => Object.values(one)))
      reach(schema, promises.given);
  }
  return promises;

  /** @param {Schema} schema @param {Record<string, Schema>} found */
  function reach(schema, found) {
    if (schema.ref !== undefined && found[schema.ref] === undefined) {
      const next = bare(schemas[schema.ref] ?? {});
      found[schema.ref] = next;
      reach(next, found);
    }
    for (const part of [...Object.values(schema.properties ?? {}), ...(schema.items ? [schema.items] : [])])
      reach(part, found);
    for (const part of schema.anyOf ?? []) reach(part, found);
  }
}

/** @param {any} parameter @returns {string} */
const called = (parameter) => `${parameter.in} ${parameter.name}`;

/** @param {any} of a body or an answer @returns {Record<string, Schema>} its schemas by media type */
const contents = (of) =>
  Object.fromEntries(Object.entries(of.content ?? {}).map(([type, { schema = {} }]) => [type, bare(schema)]));

/** @param {any} schema @returns {Schema} without what is said to people alone */
function bare(schema) {
  if (schema.$ref !== undefined) return { ref: schema.$ref.split("/").at(-1) };
  // A reference with a description of its own.
  if (schema.allOf?.length === 1) return bare(schema.allOf[0]);
  const either = schema.anyOf ?? schema.oneOf;
  return {
    ...Object.fromEntries(
      [...binding, ...bindingLists].flatMap((word) =>
        schema[word] === undefined ? [] : [[word, schema[word]]],
      ),
    ),
    ...(schema.additionalProperties === false ? { closed: true } : {}),
    ...(schema.items ? { items: bare(schema.items) } : {}),
    ...(either ? { anyOf: either.map(bare) } : {}),
    ...(schema.properties
      ? {
          properties: Object.fromEntries(
            Object.entries(schema.properties).map(([name, property]) => [name, bare(property)]),
          ),
        }
      : {}),
  };
}
