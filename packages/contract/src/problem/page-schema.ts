import { z } from "zod/v3";
import { list, text } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { problemKinds } from "./catalogue.js";
import { fieldErrorCodes } from "./error-codes.js";
import { problemType } from "./scene-problems.js";

export const ErrorMeaning = z
  .object({
    code: text({ description: "Code of an error.", example: "unknown_field" }),
    meaning: text({ description: "What it means.", example: fieldErrorCodes.unknown_field }),
  })
  .describe("What the code of an error means.");
export type ErrorMeaning = z.infer<typeof ErrorMeaning>;

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
      description: "Codes that its `errors` can carry. An open list: further ones may come.",
      example: [{ code: "unknown_field", meaning: fieldErrorCodes.unknown_field }],
    }).optional(),
  })
  .describe("A kind of problem, explained.");
export type ProblemPage = z.infer<typeof ProblemPage>;
