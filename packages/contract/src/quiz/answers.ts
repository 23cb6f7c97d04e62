import { z } from "zod/v3";
import { flag, list, text } from "../field/choice.js";
import { withOptional } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { ModelVersion } from "../result/common.js";
import { QuizCautions } from "./cautions.js";
import { mostQuestions } from "./values.js";

const entryId = (description: string, example: string) => text({ description, example, maxLength: 16 });

export const QuizPair = z
  .object({
    left: entryId("Id of an entry on the left.", "L1"),
    right: entryId("Id of the entry on the right that goes with it.", "R2"),
  })
  .strict()
  .describe("Two entries that belong together.");

const answerFields = {
  choices: list(entryId("Id of an option.", "A"), {
    description: "For a choice: ids of the options chosen. An empty list is a blank.",
    maxItems: 16,
    example: ["A"],
  }),
  number: quantity({
    description: "For a numeric question: the answer, in the unit of the question.",
    unit: "1",
    min: -1e12,
    max: 1e12,
    example: 1.5,
  }),
  typed: text({
    description:
      "For a numeric question, in place of `number`: the answer as the learner typed it, with a decimal point or comma, with or without its unit. Spaces alone are a blank; another unit is refused, and the error names the right one.",
    example: "2,5 stops",
    minLength: 0,
    maxLength: 40,
  }),
  order: list(entryId("Id of an entry.", "C"), {
    description: "For an ordering: ids of all entries, the first at the top. An empty list is a blank.",
    maxItems: 16,
    example: ["C", "A", "B"],
  }),
  pairs: list(QuizPair, {
    description: "For a matching: the partners found. An empty list is a blank.",
    maxItems: 16,
    example: [{ left: "L1", right: "R2" }],
  }),
};

export const QuizResponse = z
  .object({
    item: entryId("Id of the question.", "q1"),
    ...withOptional(answerFields, Object.keys(answerFields) as (keyof typeof answerFields)[]),
  })
  .strict()
  .describe(
    "The answer to one question, in the field that goes with its interaction. Without any field it is a blank.",
  );

export const QuizAnswersRequest = z
  .object({
    token: text({
      description: "The token of the paper, as `/v1/quiz-items` gave it.",
      example: "sq1.2026-05.bm9uY2Ugb2YgMTIg.c2VhbGVk",
      maxLength: 4096,
    }),
    responses: list(QuizResponse, {
      description: "The answers, in any order. Questions left out count as unanswered.",
      maxItems: mostQuestions,
      example: [{ item: "q1", choices: ["A"] }],
    }),
  })
  .strict()
  .describe("Answers to mark.");
export type QuizAnswersRequest = z.infer<typeof QuizAnswersRequest>;

export const QuizRemark = z
  .object({
    about: text({
      description: "Id of the option that it is about; absent where it is about the whole answer.",
      example: "B",
    }).optional(),
    misconception: text({
      description:
        "The misunderstanding behind the answer, as a stable code; absent where there is none to name.",
      example: "stops_as_divisor",
    }).optional(),
    text: text({
      description: "What to say to the learner.",
      example: "Each stop halves what is left, so stops do not divide it.",
    }),
  })
  .describe("Feedback on an answer.");

export const QuizSolution = z
  .object({
    steps: list(
      text({ description: "A step, with numbers, units and rounding.", example: "2^-3 = 12.5 %." }),
      {
        description: "The way to the answer, in order.",
        example: ["A stop halves the light.", "2^-3 = 12.5 %."],
      },
    ),
    sources: list(
      text({ description: "A citation.", example: "Jerlov N. G. (1976), Marine Optics, Elsevier." }),
      {
        description: "Its sources.",
        example: ["Jerlov N. G. (1976), Marine Optics, Elsevier."],
      },
    ),
  })
  .describe("A worked solution.");

const score = (description: string, max: number, example: number) =>
  quantity({ description, unit: "1", decimals: 4, min: 0, max, example });

export const QuizGrade = z
  .object({
    item: text({ description: "Id of the question.", example: "q1" }),
    score: score("The score: 1 where all of it is right, less where parts are.", 1, 1),
    right: flag({ description: "Whether all of it is right.", example: true }),
    feedback: list(QuizRemark, {
      description: "What to say to the learner.",
      example: [{ about: "A", text: "That is right." }],
    }),
    solution: QuizSolution.describe(
      "The worked solution. A blank gets none, except with the instructor's key.",
    ).optional(),
  })
  .describe("The mark of one answer, with feedback and solution.");

export const QuizMarks = z
  .object({
    score: score("Sum of the scores. Unanswered questions count 0.", mostQuestions, 7.5),
    max_score: quantity({
      description: "Highest possible score: 1 for each question of the paper.",
      unit: "1",
      decimals: 0,
      min: 1,
      max: mostQuestions,
      integer: true,
      example: 10,
    }),
    grades: list(QuizGrade, {
      description: "A mark for each answer, in the order of the request.",
      maxItems: mostQuestions,
      example: [
        {
          item: "q1",
          score: 1,
          right: true,
          feedback: [{ about: "A", text: "That is right." }],
          solution: { steps: ["2^-3 = 12.5 %."], sources: ["Jerlov N. G. (1976), Marine Optics, Elsevier."] },
        },
      ],
    }),
    unanswered: list(text({ description: "Id of a question.", example: "q2" }), {
      description: "Questions of the paper that were left out or blank. They come without solutions.",
      maxItems: mostQuestions,
      example: ["q2"],
    }),
    cautions: QuizCautions,
    model_version: ModelVersion.shape.version,
  })
  .describe("A paper, marked.");
export type QuizMarks = z.infer<typeof QuizMarks>;
