import { z } from "zod/v3";
import { choice, list } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { everySceneFields } from "../scene/every-scene.js";
import { mostQuestions, quizLanguages, quizLevels, quizTemplates, quizUnits } from "./values.js";

export const QuizLevel = z
  .enum(quizLevels)
  .describe("How much is asked for: `beginner`, `working` (films under water regularly) or `expert`.");

export const QuizUnits = z
  .enum(quizUnits)
  .describe("Units of the texts: `metric`, or `metric_and_imperial` with feet behind metres.");

export const QuizLanguage = z.enum(quizLanguages).describe("Language of the texts (RFC 5646).");

export const QuizTemplate = z.enum(quizTemplates).describe("A kind of question.");

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
  units: choice(QuizUnits, {
    description: "Units of the texts. Numeric answers are metric always.",
    example: "metric_and_imperial",
    default: "metric",
  }),
  language: choice(QuizLanguage, {
    description: "Language of the texts.",
    example: "en",
    default: "en",
  }),
  ...everySceneFields,
};
