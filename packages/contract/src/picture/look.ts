import { z } from "zod/v3";
import { choice } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { pictureDefaults as defaults, pictureFormats, pictureThemes, pictureWidths_px } from "./values.js";

export const PictureFormat = z.enum(pictureFormats).describe("What a picture comes in.");

export const PictureTheme = z
  .enum(pictureThemes)
  .describe("What a picture is for: a light page, a dark one, or paper, black and white included.");

/** How a picture is drawn: beside the scene, in the query string, by POST too. */
export const PictureLook = z
  .object({
    format: choice(PictureFormat, {
      description: "Vectors whose texts are text, or pixels.",
      example: "png",
      default: defaults.format,
    }),
    width_px: quantity({
      description:
        "Width in CSS pixels that the picture is laid out for; a PNG is so many wide. The height follows from what is shown.",
      unit: "px",
      ...pictureWidths_px,
      integer: true,
      example: 360,
      default: defaults.width_px,
    }),
    theme: choice(PictureTheme, {
      description: "Colours of the ground and what stands on it.",
      example: "dark",
      default: defaults.theme,
    }),
  })
  .partial()
  .strict()
  .describe("How a picture is drawn.");
export type PictureLook = z.infer<typeof PictureLook>;
