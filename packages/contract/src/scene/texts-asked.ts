import { z } from "zod/v3";
import { choice } from "../field/choice.js";
import { languages } from "./languages.js";

export const Language = z.enum(languages).describe("A language that texts are written in (RFC 5646).");

/** How a scene of any kind has its answer said. Nothing of it changes a figure. */
export const textsAskedFields = {
  language: choice(Language, {
    description:
      "Language of the texts, in the answer and in problems. Left out, it is the one that `Accept-Language` likes best, and English where it likes none.",
    example: "en",
  }),
};
