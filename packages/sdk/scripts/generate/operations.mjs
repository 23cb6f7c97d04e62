import { componentName } from "./description.mjs";

/** @import { Description, DescribedOperation, Parameter, Reference } from "./description.mjs" */

/**
 * A method of the client.
 * @typedef {object} Method
 * @property {string} group property of the client, from the operation's tag
 * @property {string} name from the operation's id
 * @property {string} method
 * @property {string} path
 * @property {boolean} repeatable
 * @property {string[]} pathParameters
 * @property {string | undefined} body component that goes in
 * @property {boolean} versioned
 * @property {boolean} selects whether it takes `fields`, the names of those that the answer shall have
 * @property {string[] | undefined} query what its GET twin takes
 * @property {string} answer type of what comes out: a component, `ArrayBuffer` for a file, `string` for one that is text
 * @property {string | undefined} file its media type, or the start of its types, where it is a file
 * @property {Look | undefined} look what says in the query string, beside the body, how a file is made
 * @property {DescribedOperation} described
 */

/**
 * What says how a file is made.
 * @typedef {object} Look
 * @property {string} component
 * @property {string[]} names of the query parameters
 * @property {Record<string, string>} formats type of what comes out, by format, the default first
 */

const idempotent = new Set(["get", "head", "put", "delete"]);

/** @param {Description} description @returns {Method[]} in the description's order */
export function methodsOf({ document }) {
  const methods = Object.entries(document.paths).flatMap(([path, operations]) => {
    const twin = isTwin(operations["get"], operations["post"]) ? operations["get"] : undefined;
    return Object.entries(operations)
      .filter(([, described]) => described !== twin && !isStream(described))
      .flatMap(([method, described]) => {
        const usual = methodOf(path, method, described, twin);
        return [usual, ...otherForms(described).map((type) => inForm(usual, type))];
      });
  });
  const names = methods.map(({ group, name }) => `${group}.${name}`);
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  if (twice !== undefined) throw new Error(`Two operations would be called ${twice}.`);
  return methods;

  /**
   * @param {string} path @param {string} method @param {DescribedOperation} described
   * @param {DescribedOperation | undefined} twin
   * @returns {Method}
   */
  function methodOf(path, method, described, twin) {
    const [tag] = described.tags;
    if (tag === undefined) throw new Error(`${described.operationId} has no tag.`);
    const parameters = (described.parameters ?? []).map(resolve);
    const body = jsonComponent(described.requestBody?.content);
    const file = fileType(described.responses["200"]?.content);
    const answer = file === undefined ? jsonComponent(described.responses["200"]?.content) : "ArrayBuffer";
    if (described.requestBody !== undefined && body === undefined) throw unknownForm(described, "its body");
    if (answer === undefined) throw unknownForm(described, "its answer");
    const selects = parameters.some(isFields);
    const beside = parameters.filter((p) => p.in === "query" && !isFields(p)).map((p) => p.name);
    const look = beside.length === 0 ? undefined : lookOf(described, beside);
    const fields = body === undefined ? {} : (document.components.schemas[body]?.properties ?? {});
    const query = (twin?.parameters ?? [])
      .map(resolve)
      .filter((p) => p.in === "query" && !isFields(p) && !beside.includes(p.name));
    return {
      group: groupName(tag),
      name: methodName(described.operationId),
      method: method.toUpperCase(),
      path,
      repeatable: described["x-safe"] === true || idempotent.has(method),
      pathParameters: parameters.filter((p) => p.in === "path").map((p) => p.name),
      body,
      versioned: "expect_model_version" in fields,
      selects,
      query: twin === undefined || look !== undefined ? undefined : query.map((p) => p.name),
      answer,
      file,
      look,
      described,
    };
  }

  /** @param {DescribedOperation} described @param {string[]} names @returns {Look} */
  function lookOf(described, names) {
    const component = described["x-look"];
    const properties = document.components.schemas[component ?? ""]?.properties ?? {};
    if (component === undefined || names.some((name) => properties[name] === undefined))
      throw unknownForm(described, "its query parameters");
    const content = described.responses["200"]?.content ?? {};
    const formats = (described.parameters ?? []).map(resolve).find(({ name }) => name === "format")
      ?.schema?.enum;
    const types = Object.keys(content);
    if (formats === undefined || formats.length !== types.length) throw unknownForm(described, "its formats");
    return {
      component,
      names: Object.keys(properties),
      formats: Object.fromEntries(
        formats.map((/** @type {string} */ format, /** @type {number} */ index) => [
          format,
          content[types[index] ?? ""]?.schema.format === "binary" ? "ArrayBuffer" : "string",
        ]),
      ),
    };
  }

  /** @param {Parameter | Reference} parameter @returns {Parameter} */
  function resolve(parameter) {
    if (!("$ref" in parameter)) return parameter;
    const found = document.components.parameters[componentName(parameter)];
    if (found === undefined) throw new Error(`The description has no ${parameter.$ref}.`);
    return found;
  }
}

/**
 * Whether an operation answers line by line: its method is written by hand (src/core/batches.ts).
 * @param {DescribedOperation} described
 */
function isStream({ responses }) {
  return responses["200"]?.content?.["application/jsonl"] !== undefined;
}

/** @param {Parameter} parameter */
function isFields(parameter) {
  return parameter.in === "query" && parameter.name === "fields";
}

/** Other forms of an answer, by `Accept`, with what the method of its own for each is called. */
const forms = { "text/calendar": "Calendar", "text/vtt": "Captions" };

/** @typedef {keyof typeof forms} Form */

/** @param {DescribedOperation} described */
function otherForms({ responses }) {
  const content = responses["200"]?.content ?? {};
  return /** @type {Form[]} */ (Object.keys(forms)).filter((type) => content[type] !== undefined);
}

/** @param {Method} method @param {Form} type @returns {Method} the same for that form */
function inForm(method, type) {
  return { ...method, name: `${method.name}${forms[type]}`, answer: "string", file: type };
}

/**
 * Whether GET answers what POST at the same path does: both are safe, and the answer is the same.
 * @param {DescribedOperation | undefined} get
 * @param {DescribedOperation | undefined} post
 */
function isTwin(get, post) {
  if (get?.["x-safe"] !== true || post?.["x-safe"] !== true) return false;
  const answers = [get, post].map(
    ({ responses: { 200: answer } }) => jsonComponent(answer?.content) ?? fileType(answer?.content),
  );
  return answers[0] !== undefined && answers[0] === answers[1];
}

/** @param {Record<string, import("./description.mjs").Content> | undefined} content */
function jsonComponent(content) {
  const schema = content?.["application/json"]?.schema;
  return schema?.$ref === undefined ? undefined : componentName(schema);
}

/**
 * Media type of what is described as a file; of a file of several types what they have in common, `*` where that is nothing.
 * @param {Record<string, import("./description.mjs").Content> | undefined} content
 */
function fileType(content) {
  // What comes as JSON, too, is asked for as JSON.
  if (content?.["application/json"] !== undefined) return undefined;
  const types = Object.keys(content ?? {});
  if (types.length < 2) return types.find((type) => content?.[type]?.schema.format === "binary");
  const kinds = new Set(types.map((type) => type.replace(/[^/]+$/, "")));
  return kinds.size > 1 ? "*" : [...kinds][0];
}

/** `reference` for the tag `Reference data`. @param {string} tag */
export function groupName(tag) {
  return tag.split(" ", 1)[0].toLowerCase();
}

/** `filterChoice` for `computeFilterChoice`: what is asked for, without the verb that the method's call stands for. */
function methodName(/** @type {string} */ operationId) {
  const name = operationId.replace(/^(compute|read|list|render)(?=[A-Z])/, "");
  return name.charAt(0).toLowerCase() + name.slice(1);
}

/** @param {DescribedOperation} described @param {string} what */
function unknownForm({ operationId }, what) {
  return new Error(
    `${operationId}: the generator does not know the form of ${what}; teach scripts/generate about it.`,
  );
}
