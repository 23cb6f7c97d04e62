import type { JsonSchema } from "../json-schema/schema.js";
import { pictureFormats, pictureThemes, pictureWidths_px } from "./values.js";

/** The schema of a `PictureLook`, apart from all others: a page that draws carries no more. A test holds it to the component. */
export const pictureLookSchema: JsonSchema = {
  type: "object",
  properties: {
    format: { type: "string", enum: [...pictureFormats] },
    width_px: {
      type: "integer",
      minimum: pictureWidths_px.min,
      maximum: pictureWidths_px.max,
      "x-unit": "px",
    },
    theme: { type: "string", enum: [...pictureThemes] },
  },
  additionalProperties: false,
};
