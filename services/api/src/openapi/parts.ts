import { fieldsParameter } from "../http/asked/fields-asked.js";
import { isObject, type Json, type JsonObject } from "./json.js";

/** Words that say something to people alone; the whole answer's schema has them. Examples stay: programs make answers of them. */
const told = new Set(["description", "title"]);
/** Always there, and always whole. */
const always = "cautions";

/**
 * Says what an answer looks like when `fields` asks for some of it. Its schema stays that of the whole answer, so that who generates a client
 * gets a type without doubts; beside it stand the schema of a part, in which nothing is required but cautions, and that of an answer in brief.
 */
export function describeParts(document: JsonObject): JsonObject {
  // Answers of calculations hold no other answer whole, so that whatever has cautions is the top of one.
  const { components, paths } = document;
  if (!isObject(components) || !isObject(components["schemas"]) || !isObject(paths)) return document;
  const { schemas } = components;
  const parts: Record<string, JsonObject> = {};
  const described = mapEach(paths, (path) =>
    mapEach(path, (operation) => (takesFields(operation) ? withParts(operation) : operation)),
  );
  return { ...document, paths: described, components: { ...components, schemas: { ...schemas, ...parts } } };

  function withParts(operation: JsonObject): JsonObject {
    const { responses } = operation;
    return {
      ...operation,
      responses: mapEach(responses, (response, status) =>
        status !== "200"
          ? response
          : { ...response, content: mapEach(response["content"], (content) => besideWhole(content)) },
      ),
    };
  }

  function besideWhole(content: JsonObject): JsonObject {
    const whole = nameOf(content["schema"]);
    if (whole === undefined) return content;
    return {
      ...content,
      "x-fields-schemas": {
        names: { $ref: `#/components/schemas/${partOf(whole)}` },
        brief: { $ref: "#/components/schemas/Brief" },
      },
    };
  }

  /** @returns the name of the component that is a part of another */
  function partOf(whole: string): string {
    const name = `${whole}Part`;
    if (parts[name] !== undefined) return name;
    // Known before it is made: a schema may refer to itself.
    parts[name] = {};
    const schema = schemas[whole];
    if (!isObject(schema)) throw new Error(`The description has no component ${whole}.`);
    parts[name] = {
      ...loosened(schema),
      description: `What \`${fieldsParameter}\` asks for of \`${whole}\`, where it is explained.`,
      "x-part-of": whole,
    };
    return name;
  }

  function loosened(schema: JsonObject): JsonObject {
    const component = nameOf(schema);
    if (component !== undefined)
      return hasFields(schemas[component]) ? { $ref: `#/components/schemas/${partOf(component)}` } : schema;
    const { required, ...rest } = schema;
    const bare = Object.entries(rest)
      .filter(([word]) => !told.has(word) && !word.startsWith("x-"))
      .map(([word, value]): [string, Json] => [word, within(word, value)]);
    const isSure = Array.isArray(required) && required.includes(always);
    const [only] = bare;
    // A reference that was wrapped for what stood beside it stands alone again.
    if (bare.length === 1 && only?.[0] === "allOf" && Array.isArray(only[1]) && isObject(only[1][0]))
      return only[1][0];
    return { ...Object.fromEntries(bare), ...(isSure ? { required: [always] } : {}) };
  }

  /** What a word of a schema says of schemas within. */
  function within(word: string, value: Json): Json {
    if (word === "properties")
      return mapEach(value, (field, name) => (name === always ? withoutText(field) : loosened(field)));
    if (word === "items" && isObject(value)) return loosened(value);
    if (Array.isArray(value) && ["allOf", "anyOf", "oneOf"].includes(word))
      return value.map((one) => (isObject(one) ? loosened(one) : one));
    return value;
  }
}

const withoutText = (schema: JsonObject): JsonObject =>
  Object.fromEntries(Object.entries(schema).filter(([word]) => !told.has(word)));

const takesFields = ({ parameters }: JsonObject): boolean =>
  Array.isArray(parameters) &&
  parameters.some(
    (one) => isObject(one) && (one["name"] === fieldsParameter || nameOf(one) === fieldsParameter),
  );

/** The component that a schema, or a parameter, is. */
const nameOf = (schema: Json | undefined): string | undefined =>
  isObject(schema) && typeof schema["$ref"] === "string" ? schema["$ref"].split("/").at(-1) : undefined;

const hasFields = (schema: Json | undefined): boolean => isObject(schema) && isObject(schema["properties"]);

function mapEach(
  value: Json | undefined,
  change: (item: JsonObject, name: string) => JsonObject,
): JsonObject {
  if (!isObject(value)) return {};
  return Object.fromEntries(
    Object.entries(value).map(([name, item]) => [name, isObject(item) ? change(item, name) : item]),
  );
}
