import { z } from "zod/v3";
import { choice, flag, text } from "../field/choice.js";
import { withOptional } from "../field/optional.js";
import { optionalPaperFields, paperFields } from "./paper-request.js";
import { qtiVersions, quizPackageFormats } from "./values.js";

export const QtiVersion = z
  .enum(qtiVersions)
  .describe("Version of Question and Test Interoperability (1EdTech): 3.0, or 2.1 for older platforms.");

export const QuizPackageFormat = z
  .enum(quizPackageFormats)
  .describe(
    "What a paper is packed as: `qti`, which a platform shows and marks, or `scorm_1_2`, a page that shows and marks the questions on its own.",
  );

const mayBeLeftOut = {
  ...optionalPaperFields,
  format: choice(QuizPackageFormat, {
    description:
      "What to pack the paper as. `scorm_1_2` is for practice, also without a network: questions, pictures and marking are in the package, and so are the keys, where anyone can read them. It needs `with_keys` `true`, and takes neither `version` nor `release` nor `closes_at`.",
    example: "scorm_1_2",
    default: quizPackageFormats[0],
  }),
  version: choice(QtiVersion, {
    description: "Version of QTI; only with `format` `qti`.",
    example: "2.1",
    default: "3.0",
  }),
  with_keys: flag({
    description:
      "Whether the package has keys, feedback and solutions, so that a platform can do the marking; this needs the instructor's key. Without them, and with `release` `after_close`, `paper.json` in the package has the token for `/v1/quiz-answers`; a practice paper has no token, since it would open the solutions to anyone who looks into the package.",
    example: true,
    default: false,
  }),
};

export const QuizPackageRequest = z
  .object({
    ...paperFields,
    title: text({
      description: "Title of the paper, as a platform shows it.",
      example: "Colour under water",
      maxLength: 120,
    }),
    ...withOptional(mayBeLeftOut, Object.keys(mayBeLeftOut) as (keyof typeof mayBeLeftOut)[]),
  })
  .strict()
  .describe("A paper to pack. Needs level, count and title.");
export type QuizPackageRequest = z.infer<typeof QuizPackageRequest>;
