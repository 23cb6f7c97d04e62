import { answerName, type KeptAnswer } from "./answers-kept.js";
import { isObject, type Json, type JsonObject } from "./json.js";

/**
 * Gives each operation the answer that its first example gets, and a GET, parameter by parameter, the scene that gets it: together
 * these are a request that is answered, which forms can be filled in with.
 * @param document with its parameters where they are used; changed
 */
export function exemplify(document: JsonObject, answers: Readonly<Record<string, KeptAnswer>>): JsonObject {
  const { paths, components = {} } = document;
  const examples: JsonObject = {};
  for (const [path, methods] of Object.entries(isObject(paths) ? paths : {})) {
    const name = answerName(path);
    const answer = answers[name];
    if (answer === undefined || !isObject(methods)) continue;
    examples[name] = { ...answer };
    const scene = firstExample(methods["post"]);
    for (const operation of Object.values(methods)) {
      if (!isObject(operation)) continue;
      const media = answerMedia(operation);
      if (media !== undefined) media["examples"] = { [name]: { $ref: `#/components/examples/${name}` } };
      if (isObject(scene)) exampleQuery(operation, scene);
    }
  }
  if (Object.keys(examples).length === 0 || !isObject(components)) return document;
  return { ...document, components: { ...components, examples } };
}

/** What the first example of a body is. */
function firstExample(operation: Json | undefined): Json | undefined {
  const examples = mediaOf(isObject(operation) ? operation["requestBody"] : undefined)?.["examples"];
  const [first] = isObject(examples) ? Object.values(examples) : [];
  return isObject(first) ? first["value"] : undefined;
}

function answerMedia({ responses }: JsonObject): JsonObject | undefined {
  return mediaOf(isObject(responses) ? responses["200"] : undefined);
}

function mediaOf(holder: Json | undefined): JsonObject | undefined {
  const content = isObject(holder) ? holder["content"] : undefined;
  const [media] = isObject(content) ? Object.values(content) : [];
  return isObject(media) ? media : undefined;
}

function exampleQuery({ parameters }: JsonObject, scene: JsonObject): void {
  for (const parameter of Array.isArray(parameters) ? parameters : []) {
    if (!isObject(parameter) || parameter["in"] !== "query") continue;
    const value = scene[String(parameter["name"])];
    if (value !== undefined) parameter["example"] = value;
  }
}
