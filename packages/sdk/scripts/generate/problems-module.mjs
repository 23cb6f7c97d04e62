import { comment, mark } from "./description.mjs";

/**
 * The kinds of problem, each with the name of its class.
 * @param {import("./description.mjs").Description} description
 */
function kindsOf({ document }) {
  const kinds = Object.entries(document.components.schemas).flatMap(([name, schema]) => {
    const type = schema.properties?.["type"]?.enum?.[0];
    const isProblem = name.endsWith("Problem") && typeof type === "string";
    return isProblem ? [{ type, error: name.replace(/(Error)?Problem$/, "Error"), schema }] : [];
  });
  if (kinds.length === 0) throw new Error("The description has no problems.");
  return kinds;
}

/**
 * A class for each kind of problem.
 * @param {import("./description.mjs").Description} description
 */
export function problemsModule(description) {
  const classes = kindsOf(description).map(({ error, schema }) => {
    const status = schema.properties?.["status"]?.enum?.[0];
    return `${comment([
      `${schema.description} Status ${status}.`,
      "@example",
      `if (error instanceof ${error}) console.error(error.detail, error.requestId);`,
    ])}export class ${error} extends ProblemError {
  override readonly name = ${JSON.stringify(error)};
}
`;
  });
  return `${mark}import { ProblemError } from "../core/response-errors.js";

${classes.join("\n")}`;
}

/**
 * The table that leads from a problem's `type` to its class.
 * @param {import("./description.mjs").Description} description
 */
export function problemTableModule(description) {
  const kinds = kindsOf(description);
  return `${mark}import type { ProblemError } from "../core/response-errors.js";
import {
${kinds.map(({ error }) => `  ${error},\n`).join("")}} from "./problems.js";

${comment(["The class of each kind of problem, by the problem's `type`."])}export const problemErrors: Readonly<Record<string, typeof ProblemError>> = {
${kinds.map(({ type, error }) => `  ${JSON.stringify(type)}: ${error},\n`).join("")}};
`;
}
