import { z } from "zod/v3";
import { list, text } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { quizErrorCodes } from "../quiz/error-codes.js";
import { type ProblemCode, problemKinds } from "./catalogue.js";
import { fieldErrorCodes } from "./error-codes.js";
import { ruleMeanings } from "./rule-meanings.js";
import { problemType } from "./scene-problems.js";

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
  const errors = meanings(code);
  return {
    type: problemType(code),
    code,
    title,
    status,
    explanation,
    ...(errors.length > 0 ? { errors } : {}),
  };
}

type Meaning = z.infer<typeof ErrorMeaning>;

function meanings(code: ProblemCode): Meaning[] {
  if (code === "invalid_scene") return [...listed(fieldErrorCodes), ...listedRules()];
  if (code === "invalid_request") return listed(fieldErrorCodes);
  const ofQuiz: Partial<Record<ProblemCode, Readonly<Record<string, string>>>> = quizErrorCodes;
  return listed(ofQuiz[code] ?? {});
}

function listed(codes: Readonly<Record<string, string>>): Meaning[] {
  return Object.entries(codes).map(([code, meaning]) => ({ code, meaning }));
}

function listedRules(): Meaning[] {
  return Object.entries(ruleMeanings).map(([code, says]) => ({
    code,
    meaning: `A rule between fields is broken: ${says}`,
  }));
}
