import { z } from "zod/v3";
import { list, text } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { problemType } from "./scene-problems.js";

/** As the page says it: a test beside the pages holds it to be true. */
const exampleMeaning = { code: "unknown_field", meaning: "There is no field of this name." };

export const ErrorMeaning = z
  .object({
    code: text({ description: "Code of an error.", example: "unknown_field" }),
    meaning: text({ description: "What it means.", example: exampleMeaning.meaning }),
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
      example: "The scene is not valid.",
    }),
    status: quantity({
      description: "The HTTP status of the answer.",
      unit: "1",
      decimals: 0,
      min: 400,
      max: 599,
      integer: true,
      example: 400,
    }),
    explanation: text({
      description: "What it means and what to do about it.",
      example: "Send one JSON object, in UTF-8.",
    }),
    errors: list(ErrorMeaning, {
      description: "Codes that its `errors` can carry. An open list: more may come.",
      example: [exampleMeaning],
    }).optional(),
  })
  .describe("A kind of problem, explained.");
export type ProblemPage = z.infer<typeof ProblemPage>;
