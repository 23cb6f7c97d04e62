import { z } from "zod/v3";
import { choice } from "../field/choice.js";
import { withOptional } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { textsAskedFields } from "../scene/texts-asked.js";
import { contactEdges, leastTape_mm, sheetLimits_mm } from "./values.js";

export const ContactEdge = z
  .enum(contactEdges)
  .describe(
    "Along which edge of the opening the electrical contacts lie, as you look at the lens from behind.",
  );

const opening = { unit: "mm", min: 5, max: 120 } as const;
const sheet = { unit: "mm", ...sheetLimits_mm } as const;

const mayBeLeftOut = {
  contacts_edge: choice(ContactEdge, {
    description:
      "The edge that sheet and tape keep off, for the contacts. Along the lower one by default, where most mounts have them (from memory): look at yours.",
    example: "bottom",
    default: "bottom",
  }),
  language: textsAskedFields.language,
};

/** What a template for a sheet behind the lens is made of. */
export const CuttingTemplateRequest = z
  .object({
    opening_width_mm: quantity({
      ...opening,
      description: "Width of the opening behind the lens, measured on yours.",
      example: 30,
    }),
    opening_height_mm: quantity({ ...opening, description: "Its height.", example: 24 }),
    sheet_width_mm: quantity({
      ...sheet,
      description: `Width of the sheet to cut, at least ${2 * leastTape_mm} mm more than the opening's: \`cut_width_mm\` of a filter mounting with \`rear_fixing\` \`tape\` is a good one.`,
      example: 34,
    }),
    sheet_height_mm: quantity({
      ...sheet,
      description: `Its height, at least ${2 * leastTape_mm} mm more than the opening's.`,
      example: 28,
    }),
    ...withOptional(mayBeLeftOut, Object.keys(mayBeLeftOut) as (keyof typeof mayBeLeftOut)[]),
  })
  .strict()
  .describe("A sheet that is taped over the opening behind a lens.");
export type CuttingTemplateRequest = z.infer<typeof CuttingTemplateRequest>;
