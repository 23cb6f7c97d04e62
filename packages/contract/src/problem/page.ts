import { z } from "zod/v3";
import { list, text } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { sceneRules } from "../rules/all.js";
import { mountingRules } from "../rules/mounting.js";
import { type ProblemCode, problemKinds, problemType } from "./catalogue.js";
import { fieldErrorCodes } from "./error-codes.js";

export const ErrorMeaning = z
  .object({
    code: text({ description: "Code of an error.", example: "unknown_field" }),
    meaning: text({ description: "What it means.", example: fieldErrorCodes.unknown_field }),
  })
  .describe("What the code of an error means.");

/** What the `type` of a problem leads to. */
export const ProblemPage = z
  .object({
    type: text({
      description: "The kind of problem, as problems name it.",
      example: problemType("invalid_scene"),
    }),
    code: text({ description: "The same for programs.", example: "invalid_scene" }),
    title: text({
      description: "The kind of problem in a sentence.",
      example: problemKinds.invalid_scene.title,
    }),
    status: quantity({
      description: "The HTTP status that it comes with.",
      unit: "1",
      decimals: 0,
      min: 400,
      max: 599,
      integer: true,
      example: 400,
    }),
    explanation: text({
      description: "What it means and what to do about it.",
      example: problemKinds.malformed_json.explanation,
    }),
    errors: list(ErrorMeaning, {
      description:
        "Codes that its `errors` can carry; the model adds its own where a scene leads outside it.",
      example: [{ code: "unknown_field", meaning: fieldErrorCodes.unknown_field }],
    }).optional(),
  })
  .describe("A kind of problem, explained.");
export type ProblemPage = z.infer<typeof ProblemPage>;

/** The page of one kind of problem. */
export function problemPage(code: ProblemCode): ProblemPage {
  const { title, status, explanation } = problemKinds[code];
  return {
    type: problemType(code),
    code,
    title,
    status,
    explanation,
    ...(code === "invalid_scene" ? { errors: errorMeanings() } : {}),
  };
}

function errorMeanings() {
  return [
    ...Object.entries(fieldErrorCodes).map(([name, meaning]) => ({ code: name, meaning })),
    ...[...sceneRules, ...mountingRules].map(({ code, says }) => ({
      code,
      meaning: `A rule between fields is broken: ${says}`,
    })),
  ];
}
