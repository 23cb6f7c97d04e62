import { comment, mark } from "./description.mjs";
import { groupName, methodsOf } from "./operations.mjs";

/** @import { Description } from "./description.mjs" */
/** @import { Method } from "./operations.mjs" */

/**
 * A class for each group of operations with a method for each, and `Api`, which has them all.
 * @param {Description} description
 */
export function apiModule(description) {
  const methods = methodsOf(description);
  const groups = [...new Set(methods.map(({ group }) => group))];
  const queries = [...new Set(methods.flatMap(({ query }) => (query === undefined ? [] : [lines(query)])))];
  const inAndOut = methods.flatMap(({ body, answer, file }) => [
    ...(file === undefined ? [answer] : []),
    ...(body === undefined ? [] : [body]),
  ]);
  const brief = methods.some(({ selects }) => selects) ? ["Brief"] : [];
  const look = methods.flatMap((method) => (method.look === undefined ? [] : [method.look.component]));
  const types = [...new Set([...inAndOut, ...brief, ...look])].sort();

  const tagOf = (/** @type {string} */ group) =>
    description.document.tags.find(({ name }) => groupName(name) === group);
  const classes = groups.map((group) => groupClass(group, tagOf(group)?.description ?? "", methods, queries));
  const ofFields = brief.length > 0 ? 'import type { FieldsOf, Picked } from "../core/fields.js";\n' : "";
  const calculations = methods.filter(({ selects, body }) => selects && body !== undefined);
  const byName = (/** @type {(method: Method) => string | undefined} */ of) =>
    calculations
      .map((method) => `  ${JSON.stringify(method.path.split("/").at(-1))}: ${of(method)};\n`)
      .join("");
  return `${mark}${ofFields}import type { Call, CallOptions, Send } from "../core/types.js";
import type {
${types.map((type) => `  ${type},\n`).join("")}} from "./types.js";

${queries.map((query, index) => `const ${queryName(index)} = [\n${query}];\n`).join("\n")}
${classes.join("\n")}
${comment(["What each calculation takes, by its name."])}export interface SceneOf {
${byName(({ body }) => body)}}

${comment(["What each calculation answers, by its name."])}export interface AnswerOf {
${byName(({ answer }) => answer)}}

${comment(["Every operation of the service, in groups: what `Sunfathom` and `OfflineSunfathom` have in common."])}export abstract class Api {
${groups.map((group) => `  /** ${tagOf(group)?.description ?? ""} */\n  declare readonly ${group}: ${className(group)};\n`).join("")}
  constructor(send: Send) {
${groups.map((group) => `    this.${group} = new ${className(group)}(send);\n`).join("")}  }
}
`;
}

/**
 * @param {string} group @param {string} text @param {Method[]} all
 * @param {string[]} queries
 */
function groupClass(group, text, all, queries) {
  const methods = all.filter((method) => method.group === group);
  return `${comment([text])}export class ${className(group)} {
  readonly #send: Send;

  constructor(send: Send) {
    this.#send = send;
  }

${methods.map((method) => methodText(method, queries)).join("\n")}}
`;
}

/** @param {Method} method @param {string[]} queries */
function methodText({ described, ...method }, queries) {
  const body = method.body === undefined ? [] : [[argumentName(method.body), method.body]];
  const values = [...method.pathParameters.map((name) => [name, "string"]), ...body];
  const inputs = values.map(([name, type]) => `${name}: ${type}`);
  const operation = [
    `method: ${JSON.stringify(method.method)}`,
    `path: ${JSON.stringify(method.path)}`,
    ...(method.repeatable ? [] : ["once: true"]),
    ...(method.query === undefined ? [] : [`query: ${queryName(queries.indexOf(lines(method.query)))}`]),
    ...(method.versioned ? ["versioned: true"] : []),
    ...(method.selects ? ["selects: true"] : []),
    ...(method.file === undefined ? [] : [`file: ${JSON.stringify(method.file)}`]),
    ...(method.look === undefined ? [] : [`beside: ${JSON.stringify(method.look.names)}`]),
  ];
  const input = [
    ...(method.pathParameters.length === 0 ? [] : [`path: { ${method.pathParameters.join(", ")} }`]),
    ...body.map(([name]) => `body: ${name}`),
  ];
  const inputText = input.length === 0 ? "{}" : `{ ${input.join(", ")} }`;
  const signature = (/** @type {string} */ options, /** @type {string} */ answer, generic = "") =>
    `  ${method.name}${generic}(${[...inputs, options].join(", ")}): Call<${answer}>`;
  const whole = signature("options?: CallOptions", method.answer);
  const names = "{ fields: readonly Names[] }";
  const overloads = method.selects
    ? [
        `${whole};\n`,
        signature(
          `options: CallOptions & ${names}`,
          `Picked<${method.answer}, Names | "cautions">`,
          `<const Names extends FieldsOf<${method.answer}>>`,
        ),
        ";\n",
        signature('options: CallOptions & { fields: "brief" }', "Brief"),
        ";\n",
        // What the signatures before it say; the compiler holds this one to them no further.
        signature("options?: CallOptions", "never"),
      ].join("")
    : method.look === undefined
      ? whole
      : [
          ...Object.entries(method.look.formats).flatMap(([format, type], index) => [
            signature(
              `options${index === 0 ? "?" : ""}: CallOptions & ${method.look?.component} & { format${index === 0 ? "?" : ""}: ${JSON.stringify(format)} }`,
              type,
            ),
            ";\n",
          ]),
          signature(`options?: CallOptions & ${method.look.component}`, "never"),
        ].join("");
  return `${documentation({ described, ...method })}${overloads} {
    return this.#send({ ${operation.join(", ")} }, ${inputText}, options);
  }
`;
}

/** What comes out, by format. @param {import("./operations.mjs").Look} look */
function filesOf({ formats }) {
  const what = Object.entries(formats).map(
    ([format, type]) =>
      `the ${type === "string" ? "text" : "bytes"} of ${/^[aefhilmnorsx]/.test(format) ? "an" : "a"} ${format.toUpperCase()}`,
  );
  return what.join(", or ");
}

/** @param {Method} method */
function documentation({ described, pathParameters, body, group, name, answer, file, look, repeatable }) {
  const content = Object.values(described.requestBody?.content ?? {})[0];
  const example = Object.values(content?.examples ?? {})[0];
  const values = [
    ...pathParameters.map(() => '"..."'),
    ...(example === undefined ? [] : JSON.stringify(example.value, undefined, 2).split("\n")),
  ];
  const inputs = (described.parameters ?? []).flatMap((parameter) =>
    "in" in parameter && parameter.in === "path"
      ? [`@param ${parameter.name} ${parameter.description ?? ""}`]
      : [],
  );
  return comment(
    [
      `${described.summary}. ${described.description}`,
      ...(repeatable ? [] : ["Sent once, never repeated by the client."]),
      ...inputs,
      ...(body === undefined
        ? []
        : [`@param ${argumentName(body)} see \`${body}\` for fields, units and defaults`]),
      `@returns ${look !== undefined ? filesOf(look) : file === undefined ? `\`${answer}\`` : `the ${answer === "string" ? "text" : "bytes"} of the file (\`${file}\`)`}, or rejects with a \`SunfathomError\``,
      "@example",
      ...(example === undefined ? [] : [`// ${example.summary}`]),
      `const answer = await client.${group}.${name}(${values.join("\n")});`,
    ].flatMap((line) => line.split("\n")),
    "  ",
  );
}

/** @param {string[]} names */
function lines(names) {
  return names.map((name) => `  ${JSON.stringify(name)},\n`).join("");
}

/** @param {number} index */
function queryName(index) {
  return index === 0 ? "sceneQuery" : `query${index + 1}`;
}

/** @param {string} name of a component or group */
function className(name) {
  return name.charAt(0).toUpperCase() + name.slice(1);
}

/** @param {string} component */
function argumentName(component) {
  return component.charAt(0).toLowerCase() + component.slice(1);
}
