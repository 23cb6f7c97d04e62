import { z } from "zod/v3";
import { choice } from "../field/choice.js";
import { cuttingTemplateFormats, slateFormats } from "./values.js";

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

export const CuttingTemplateFormat = z
  .enum(cuttingTemplateFormats)
  .describe("What a template comes in, at full size.");

/** What a template comes in: beside the body, in the query string. */
export const CuttingTemplateLook = z
  .object({
    format: choice(CuttingTemplateFormat, {
      description: "A PDF to print, or vectors.",
      example: "svg",
      default: cuttingTemplateFormats[0],
    }),
  })
  .partial()
  .strict()
  .describe("What a template comes in.");
export type CuttingTemplateLook = z.infer<typeof CuttingTemplateLook>;
