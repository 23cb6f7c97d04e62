import { isObject, type Json, type JsonObject } from "./json.js";

/**
 * Moves what many operations say alike, their problems and query parameters, into components that they refer to. The
 * writer of the description repeats them for each, which makes it six times as long. Scenes of different kinds may say
 * different things under one name: then the first is shared, and another stands where it is used.
 */
export function share(document: JsonObject): JsonObject {
  const responses: JsonObject = {};
  const parameters: JsonObject = {};
  const paths = mapObject(document["paths"], (path) =>
    mapObject(path, (operation) => {
      if (!isObject(operation)) return operation;
      const { parameters: own, responses: all } = operation;
      return {
        ...operation,
        ...(Array.isArray(own)
          ? { parameters: own.map((item) => refer(item, nameOfParameter, parameters, "parameters")) }
          : {}),
        responses: mapObject(all, (item) => refer(item, nameOfProblems, responses, "responses")),
      };
    }),
  );
  const components = isObject(document["components"]) ? document["components"] : {};
  return { ...document, paths, components: { ...components, parameters, responses } };
}

/** A reference to `item`, once it is among the shared ones; `item` itself where it has no name to be shared under. */
function refer(
  item: Json,
  nameOf: (item: JsonObject) => string | undefined,
  shared: JsonObject,
  section: string,
): Json {
  const name = isObject(item) ? nameOf(item) : undefined;
  if (name === undefined) return item;
  const known = shared[name];
  if (known !== undefined && JSON.stringify(known) !== JSON.stringify(item)) return item;
  shared[name] = item;
  return { $ref: `#/components/${section}/${name}` };
}

function nameOfParameter({ in: place, name }: JsonObject): string | undefined {
  return place === "query" && typeof name === "string" ? name : undefined;
}

/** The codes of the problems that a response can be. */
function nameOfProblems({ content }: JsonObject): string | undefined {
  const problems = isObject(content) ? content["application/problem+json"] : undefined;
  const examples = isObject(problems) ? problems["examples"] : undefined;
  return isObject(examples) ? Object.keys(examples).join("-or-") : undefined;
}

function mapObject(value: Json | undefined, change: (item: Json) => Json): JsonObject {
  if (!isObject(value)) return {};
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, change(item)]));
}
