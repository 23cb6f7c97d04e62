import { z } from "zod/v3";
import { choice, flag, text } from "../field/choice.js";
import { withOptional } from "../field/optional.js";
import { optionalPaperFields, paperFields } from "./paper-request.js";
import { qtiVersions } from "./values.js";

export const QtiVersion = z
  .enum(qtiVersions)
  .describe("Version of Question and Test Interoperability (1EdTech): 3.0, or 2.1 for older platforms.");

const mayBeLeftOut = {
  ...optionalPaperFields,
  version: choice(QtiVersion, {
    description: "Version of the standard.",
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
