import { z } from "zod/v3";
import { choice } from "../field/choice.js";
import { slateFormats } from "./values.js";

export const SlateFormat = z.enum(slateFormats).describe("What a slate comes in.");

/** What a slate comes in: beside the scene, in the query string. */
export const SlateLook = z
  .object({
    format: choice(SlateFormat, {
      description: "A PDF to print, vectors whose texts are text, or pixels.",
      example: "svg",
      default: slateFormats[0],
    }),
  })
  .partial()
  .strict()
  .describe("What a slate comes in.");
export type SlateLook = z.infer<typeof SlateLook>;
