import { z } from "zod/v3";
import { choice } from "../field/choice.js";
import { languages } from "./languages.js";
import { textUnits } from "./text-units.js";

export const Language = z.enum(languages).describe("A language that texts are written in (RFC 5646).");

export const TextUnits = z
  .enum(textUnits)
  .describe("Units of lengths in texts: `metric`, or `imperial` with feet and inches.");

/** How a scene of any kind has its answer said. Nothing of it changes a figure. */
export const textsAskedFields = {
  language: choice(Language, {
    description:
      "Language of the texts, in the answer and in problems. Left out, it is the one that `Accept-Language` likes best, and English where it likes none.",
    example: "en",
  }),
  units: choice(TextUnits, {
    description:
      "Units of depths, distances and visibility in the texts of answers and pictures. Fields keep the units in their names, and so does a problem, which is about fields; threads, rings and sheets are in mm always.",
    example: "imperial",
    default: "metric",
  }),
};
