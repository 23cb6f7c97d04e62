import { z } from "zod/v3";
import { choice } from "../field/choice.js";
import { cuttingTemplateFormats, gradeFormats, slateFormats } from "./values.js";

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

export const GradeFormat = z
  .enum(gradeFormats)
  .describe("What a grade comes in: the Common LUT Format, or a color decision list.");

/** What a grade comes in: beside the scene, in the query string. */
export const GradeLook = z
  .object({
    format: choice(GradeFormat, {
      description:
        "The Common LUT Format (`clf`), from code values to code values, or an ASC CDL (`cdl`) for linear light, which holds no matrix: not with `finish` `matched`.",
      example: "cdl",
      default: gradeFormats[0],
    }),
  })
  .partial()
  .strict()
  .describe("What a grade comes in.");
export type GradeLook = z.infer<typeof GradeLook>;
