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
    description: "For a numeric question: the answer, in the unit asked for.",
    unit: "1",
    min: -1e12,
    max: 1e12,
    example: 1.5,
  }),
  typed: text({
    description:
      "For a numeric question, in place of `number`: the answer as it was typed, with a decimal point or comma, with its unit or without. Nothing but blanks is a blank; another unit is refused with the right one.",
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
    "What was answered to one question: the one field that goes with its interaction. Without any it is a blank.",
  );

export const QuizAnswersRequest = z
  .object({
    token: text({
      description: "The token of the paper, as `/v1/quiz-items` gave it.",
      example: "sq1.2026-05.bm9uY2Ugb2YgMTIg.c2VhbGVk",
      maxLength: 4096,
    }),
    responses: list(QuizResponse, {
      description: "What was answered, in any order. Questions left out count as unanswered.",
      maxItems: mostQuestions,
      example: [{ item: "q1", choices: ["A"] }],
    }),
  })
  .strict()
  .describe("Answers to be marked.");
export type QuizAnswersRequest = z.infer<typeof QuizAnswersRequest>;

export const QuizRemark = z
  .object({
    about: text({
      description: "Id of the option that it is about; about the whole answer when left out.",
      example: "B",
    }).optional(),
    misconception: text({
      description: "The misunderstanding that the answer shows, by a stable code; where one is known.",
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
        description: "What it rests on.",
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
    score: score("What the answer earns: 1 for all of it, parts of it where parts are right.", 1, 1),
    right: flag({ description: "Whether all of it is right.", example: true }),
    feedback: list(QuizRemark, {
      description: "What to say to the learner.",
      example: [{ about: "A", text: "That is right." }],
    }),
    solution: QuizSolution.describe(
      "How the question is worked out. A blank brings none, but to the instructor's key.",
    ).optional(),
  })
  .describe("The mark of one answer, with what there is to learn from it.");

export const QuizMarks = z
  .object({
    score: score("Sum of the scores. Questions that were not answered count nothing.", mostQuestions, 7.5),
    max_score: quantity({
      description: "What could be had: one for each question of the paper.",
      unit: "1",
      decimals: 0,
      min: 1,
      max: mostQuestions,
      integer: true,
      example: 10,
    }),
    grades: list(QuizGrade, {
      description: "A mark for each answer, in the order in which they were sent.",
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
      description: "Questions of the paper that were left out or blank. Their solutions are not told.",
      maxItems: mostQuestions,
      example: ["q2"],
    }),
    cautions: QuizCautions,
    model_version: ModelVersion.shape.version,
  })
  .describe("A paper, marked.");
export type QuizMarks = z.infer<typeof QuizMarks>;
