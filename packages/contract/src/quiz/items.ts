import { z } from "zod/v3";
import { choice, list, text } from "../field/choice.js";
import { withOptional } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { ModelVersion } from "../result/common.js";
import { QuizCautions } from "./cautions.js";
import {
  optionalPaperFields,
  paperFields,
  QuizLevel,
  QuizRelease,
  QuizTemplate,
  QuizTopic,
} from "./paper-request.js";
import { mostQuestions, quizInteractions } from "./values.js";

export { QuizTopic };

export const QuizItemsRequest = z
  .object({
    ...paperFields,
    ...withOptional(
      optionalPaperFields,
      Object.keys(optionalPaperFields) as (keyof typeof optionalPaperFields)[],
    ),
  })
  .strict()
  .describe("A paper to ask for. Needs level and count.");
export type QuizItemsRequest = z.infer<typeof QuizItemsRequest>;

export const QuizInteraction = z
  .enum(quizInteractions)
  .describe(
    "How a question is answered: `single_choice` and `multiple_choice` with `choices`, `numeric` with `number`, `ordering` with `order`, `matching` with `pairs`.",
  );

export const QuizEntry = z
  .object({
    id: text({ description: "Id of the entry within its question.", example: "A" }),
    text: text({ description: "What it says.", example: "2 stops" }),
  })
  .describe("Something to choose, to put in order or to match.");

export const QuizPicture = z
  .object({
    svg: text({
      description: "A complete SVG document.",
      example: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 480 240"/>',
    }),
    alt: text({
      description: "The same in words.",
      example: "Light that is left at 10 m, over the wavelength: highest near 490 nm.",
    }),
  })
  .describe("A picture that belongs to a question.");

const exampleEntries = [
  { id: "A", text: "25 %" },
  { id: "B", text: "12.5 %" },
];

const itemFields = {
  id: text({ description: "Id of the question within its paper.", example: "q1" }),
  fingerprint: text({
    description:
      "Identifies the question across papers: send it in `avoid` of a later paper, so that nobody meets the question twice.",
    example: "9f86d081884c7d65",
  }),
  template: choice(QuizTemplate, { description: "Kind of the question.", example: "red_left" }),
  topic: choice(QuizTopic, { description: "What it is about.", example: "light" }),
  level: choice(QuizLevel, { description: "Its level.", example: "working" }),
  interaction: choice(QuizInteraction, { description: "How it is answered.", example: "single_choice" }),
  stem: text({
    description: "The question.",
    example: "Water absorbs 3.0 stops of red. How much of the red light is left?",
  }),
  difficulty: quantity({
    description:
      "Estimated from the question's features by a stated rule, not yet fitted to learners' answers: 0 easy, 1 hard.",
    unit: "1",
    decimals: 2,
    min: 0,
    max: 1,
    example: 0.43,
  }),
};

const fieldsOfSomeItems = {
  picture: QuizPicture.describe("A picture that the question is about."),
  options: list(QuizEntry, {
    description: "The options to choose from or, for an ordering, to put in order.",
    maxItems: 16,
    example: exampleEntries,
  }),
  left: list(QuizEntry, {
    description: "For a matching: what to find a partner for.",
    maxItems: 16,
    example: [{ id: "L1", text: "density 0.3" }],
  }),
  right: list(QuizEntry, {
    description: "For a matching: the partners. Some may be spare.",
    maxItems: 16,
    example: [{ id: "R1", text: "1 stop" }],
  }),
  unit: text({
    description:
      "Unit of a numeric answer, the same in each language, as the question's text says it, too; empty for a bare number.",
    example: "stops",
  }),
  decimals: quantity({
    description: "Decimals that a numeric answer needs.",
    unit: "1",
    decimals: 0,
    min: 0,
    max: 6,
    integer: true,
    example: 1,
  }),
};

export const QuizItem = z
  .object({
    ...itemFields,
    ...withOptional(fieldsOfSomeItems, Object.keys(fieldsOfSomeItems) as (keyof typeof fieldsOfSomeItems)[]),
  })
  .describe("A question without its answer.");

export const QuizPaper = z
  .object({
    items: list(QuizItem, {
      description: "The questions, in order.",
      minItems: 1,
      maxItems: mostQuestions,
      example: [
        {
          id: "q1",
          fingerprint: "9f86d081884c7d65",
          template: "red_left",
          topic: "light",
          level: "working",
          interaction: "single_choice",
          stem: "Water absorbs 3.0 stops of red. How much of the red light is left?",
          difficulty: 0.43,
          options: exampleEntries,
        },
      ],
    }),
    cautions: QuizCautions,
    token: text({
      description: "The paper, sealed: send it to `/v1/quiz-answers` with the answers.",
      example: "sq1.2026-05.bm9uY2Ugb2YgMTIg.c2VhbGVk",
    }),
    expires: text({
      description: "When the token expires (RFC 3339, UTC).",
      example: "2026-05-12T09:30:00.000Z",
    }),
    release: choice(QuizRelease, { description: "When the paper gives its marks.", example: "at_once" }),
    closes_at: text({
      description: "When it closes (RFC 3339, UTC), if it gives its marks after that.",
      example: "2026-05-11T09:30:00.000Z",
    }).optional(),
    model_version: ModelVersion.shape.version,
  })
  .describe("A paper without its answers.");
export type QuizPaper = z.infer<typeof QuizPaper>;
