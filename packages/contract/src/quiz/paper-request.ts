import { z } from "zod/v3";
import { choice, list, text } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { everySceneFields } from "../scene/every-scene.js";
import { instantPattern } from "../scene/time.js";
import {
  mostQuestions,
  quizLanguages,
  quizLevels,
  quizReleases,
  quizTemplates,
  quizTopics,
  quizUnits,
} from "./values.js";

export const QuizLevel = z
  .enum(quizLevels)
  .describe("How hard: `beginner`, `working` (intermediate: films under water regularly) or `expert`.");

export const QuizUnits = z
  .enum(quizUnits)
  .describe("Units of the texts: `metric`, or `metric_and_imperial` with feet behind metres.");

export const QuizLanguage = z
  .enum(quizLanguages)
  .describe("A language that questions are written in (RFC 5646).");

export const QuizTemplate = z.enum(quizTemplates).describe("A kind of question.");

export const QuizTopic = z.enum(quizTopics).describe("What a question is about.");

export const QuizRelease = z
  .enum(quizReleases)
  .describe(
    "When a paper gives its marks: `at_once` for practice, where each mark comes with feedback and the worked solution, so that anyone who holds the token can find out the whole key; `after_close` for a test, where nobody without the instructor's key learns anything before `closes_at`.",
  );

/** Sixteen hexadecimal digits. */
const fingerprintPattern = /^[0-9a-f]{16}$/;

/** What a paper is made from. */
export const paperFields = {
  level: choice(QuizLevel, { description: "Level of the questions.", example: "working" }),
  count: quantity({
    description: "How many questions; no two are alike.",
    unit: "1",
    min: 1,
    max: mostQuestions,
    integer: true,
    example: 10,
  }),
};

/** What may be left out of it. */
export const optionalPaperFields = {
  templates: list(QuizTemplate, {
    description: "Kinds of question to draw from, in turn; all that the level has when left out.",
    minItems: 1,
    maxItems: quizTemplates.length,
    example: ["filter_for_water", "density_match"],
  }),
  topics: list(QuizTopic, {
    description:
      "What the questions are about; everything when left out. With `templates`, those of them that are about it.",
    minItems: 1,
    maxItems: quizTopics.length,
    example: ["filter", "exposure"],
  }),
  avoid: list(
    text({
      description: "The `fingerprint` of a question.",
      example: "9f86d081884c7d65",
      pattern: fingerprintPattern,
    }),
    {
      description: "Questions to leave out, because learners have met them already.",
      maxItems: 1000,
      example: ["9f86d081884c7d65"],
    },
  ),
  seed: text({
    description:
      "Any text; only with the instructor's key. The same text with the same other fields gives the same paper, in `/v1/quiz-items` and in `/v1/quiz-packages`, as long as service, key and `model_version` stay the same. Without it every paper is new.",
    example: "class of May",
    maxLength: 100,
  }),
  units: choice(QuizUnits, {
    description: "Units of the texts. Numeric answers are always metric.",
    example: "metric_and_imperial",
    default: "metric",
  }),
  language: choice(QuizLanguage, {
    description:
      "Language of the texts, in the paper, its marks and its packages. Left out, it is the one of these that `Accept-Language` likes best, and English where it likes none of them. The same seed asks the same in each.",
    example: "es",
  }),
  release: choice(QuizRelease, {
    description: "When to give the marks.",
    example: "at_once",
    default: "at_once",
  }),
  closes_at: text({
    description:
      "When the paper closes, with its offset from UTC (RFC 3339), from now to 366 days ahead. Only, and always, with `release` `after_close`.",
    example: "2026-05-12T09:30:00+02:00",
    pattern: instantPattern,
  }),
  ...everySceneFields,
};
