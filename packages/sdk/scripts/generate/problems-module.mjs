import { comment, mark } from "./description.mjs";

/**
 * A class for each kind of problem, and the table that leads from its `type` to it.
 * @param {import("./description.mjs").Description} description
 */
export function problemsModule({ document }) {
  const kinds = Object.entries(document.components.schemas).flatMap(([name, schema]) => {
    const type = schema.properties?.["type"]?.enum?.[0];
    const isProblem = name.endsWith("Problem") && typeof type === "string";
    return isProblem ? [{ type, error: name.replace(/(Error)?Problem$/, "Error"), schema }] : [];
  });
  if (kinds.length === 0) throw new Error("The description has no problems.");
  const classes = kinds.map(({ error, schema }) => {
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
  const table = kinds.map(({ type, error }) => `  ${JSON.stringify(type)}: ${error},\n`);
  return `${mark}import { ProblemError } from "../core/errors.js";

${classes.join("\n")}
${comment(["The class of each kind of problem, by the problem's `type`."])}export const problemErrors: Readonly<Record<string, typeof ProblemError>> = {
${table.join("")}};
`;
}
