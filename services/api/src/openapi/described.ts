import { type JsonSchema, type ProblemCode, problemCodes, problemComponent } from "@sunfathom/contract";
import { describedSchemas } from "@sunfathom/contract/described";
import { problemExplanations, problemTitles } from "@sunfathom/words";

/** The contract's components, with the texts of problems: those are of one language, and the contract has them of none. */
export const described: Readonly<Record<string, JsonSchema>> = {
  ...describedSchemas,
  ...Object.fromEntries(problemCodes.map((code) => [problemComponent(code), problemSchema(code)])),
};

function problemSchema(code: ProblemCode): JsonSchema {
  const { description: _, properties = {}, ...schema } = describedSchemas[problemComponent(code)] ?? {};
  const title = problemTitles()[code];
  const { title: ofTitle, detail } = properties;
  return {
    ...schema,
    properties: {
      ...properties,
      title: { ...ofTitle, examples: [title] },
      detail: { ...detail, examples: [title] },
    },
    description: `${title} ${problemExplanations[code]}`,
  };
}
