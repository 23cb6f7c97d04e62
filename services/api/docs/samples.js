// What the page of the reference makes of the description before it shows it: forms that are filled in with a scene that is
// answered, and each call written out. Pure, so that it can be tried without a browser.

/** @typedef {{ name: string, in: string, description?: string, example?: unknown, schema: Record<string, any> }} Parameter */
/** @typedef {{ operationId: string, tags: string[], parameters?: any[], requestBody?: any, responses: any, security?: object[] }} Operation */

/**
 * @param {any} description as /openapi.json has it; changed
 * @param {string} address of the service, without a slash at the end
 */
export function prepare(description, address) {
  description.servers = [{ url: address }];
  for (const schema of Object.values(description.components.schemas)) flatten(schema, description);
  // By POST first: that is how most will ask.
  for (const [path, { post, ...others }] of Object.entries(description.paths))
    description.paths[path] = post === undefined ? others : { post, ...others };
  for (const [path, methods] of Object.entries(description.paths))
    for (const [method, operation] of Object.entries(methods)) {
      const parameters = (operation.parameters ?? []).map((/** @type {any} */ one) =>
        resolved(one, description),
      );
      operation.parameters = parameters
        .filter((/** @type {Parameter} */ one) => one.in !== "header")
        .map(filledIn);
      operation["x-code-samples"] = samples(
        { path, method: method.toUpperCase(), operation, parameters },
        address,
      );
    }
  return description;
}

/** @param {any} value @param {any} description */
function resolved(value, description) {
  if (typeof value.$ref !== "string") return structuredClone(value);
  let target = description;
  for (const step of value.$ref.slice(2).split("/")) target = target[step];
  return structuredClone(target);
}

/** A reference that stands alone in `allOf`, for the sake of its neighbours, put in its place. @param {any} schema @param {any} description */
function flatten(schema, description) {
  for (const [name, property] of Object.entries(schema.properties ?? {})) {
    const [only, ...more] = property.allOf ?? [];
    if (only?.$ref === undefined || more.length > 0) continue;
    const { allOf: _, ...own } = property;
    const target = resolved(only, description);
    // What has fields of its own keeps its name, and its place.
    if (target.properties === undefined) schema.properties[name] = { ...target, ...own };
  }
}

/**
 * The form takes the default of a field for what to send, and all of them together are no scene. Names to choose from are told, not
 * listed: the form sends the first of a list where none is chosen.
 * @param {Parameter} parameter
 */
function filledIn({ example, ...parameter }) {
  const { default: byItself, examples: _, enum: names, ...schema } = parameter.schema;
  const allowed =
    names === undefined
      ? ""
      : ` One of ${names.map((/** @type {string} */ name) => `\`${name}\``).join(", ")}.`;
  const said = `${allowed}${byItself === undefined ? "" : ` Default: \`${byItself}\`.`}`;
  const value = example ?? (parameter.in === "path" ? parameter.schema.examples?.[0] : undefined);
  return {
    ...parameter,
    description: `${parameter.description ?? ""}${said}`,
    schema: value === undefined ? schema : { ...schema, default: value },
  };
}

/**
 * @param {{ path: string, method: string, operation: Operation, parameters: Parameter[] }} call
 * @param {string} address
 */
function samples({ path, method, operation, parameters }, address) {
  const [media] = Object.values(operation.requestBody?.content ?? {});
  const [first] = Object.values(/** @type {any} */ (media)?.examples ?? {});
  const body = /** @type {any} */ (first)?.value;
  const query = parameters.filter((one) => one.in === "query" && one.example !== undefined);
  const at = path.replace(/\{(.*?)\}/g, (_, name) => pathValue(parameters, name));
  const search = new URLSearchParams(query.map(({ name, example }) => [name, String(example)]));
  const url = `${address}${at}${query.length > 0 ? `?${search}` : ""}`;
  const kinds = operation.responses["200"].content;
  const isFile = Object.keys(kinds).includes("application/zip");
  const curl = [
    `curl '${url}'`,
    ...(body === undefined
      ? []
      : ["-H 'Content-Type: application/json'", `-d '${quoted(JSON.stringify(body))}'`]),
    ...(isFile ? ["-o quiz.zip"] : []),
  ].join(" \\\n  ");
  const scene = Object.fromEntries(query.map(({ name, example }) => [name, example]));
  const given = path.includes("{")
    ? `"${pathValue(parameters, "name")}"`
    : inTypeScript(body ?? (query.length > 0 ? scene : undefined));
  const call = `client.${groupOf(operation)}.${methodOf(operation)}(${given})`;
  const read = Object.keys(kinds).includes("application/jsonl")
    ? `for await (const line of ${call}) console.log(line);`
    : `const answer = await ${call};
console.log(answer);`;
  const typescript = `import { Sunfathom } from "@sunfathom/sdk";

const client = new Sunfathom({ baseUrl: "${address}" });
${read}`;
  return method === "HEAD"
    ? []
    : [
        { lang: "bash", label: "curl", source: curl },
        { lang: "typescript", label: "TypeScript", source: typescript },
      ];
}

/** @param {Parameter[]} parameters @param {string} name */
const pathValue = (parameters, name) =>
  String(parameters.find((one) => one.in === "path" && one.name === name)?.schema.examples?.[0] ?? name);

/** @param {string} text within single quotes of a shell */
const quoted = (text) => text.replaceAll("'", "'\\''");

/** @param {unknown} value */
const inTypeScript = (value) =>
  value === undefined ? "" : JSON.stringify(value, null, 2).replace(/^(\s*)"([A-Za-z_]\w*)":/gm, "$1$2:");

/** As the client's generator names them. @param {Operation} operation */
const groupOf = ({ tags: [tag = ""] }) => (tag.split(" ")[0] ?? "").toLowerCase();
/** @param {Operation} operation */
const methodOf = ({ operationId }) =>
  operationId === "runBatch"
    ? "run"
    : operationId.replace(/^(?:compute|read|list|render)([A-Z])/, (_, first) => first.toLowerCase());
