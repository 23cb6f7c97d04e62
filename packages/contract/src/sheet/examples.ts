import type { CuttingTemplateRequest } from "./cutting-template.js";

/** Templates to ask for. */
export const cuttingTemplateExamples = {
  usual: {
    summary: "An opening of 30 × 24 mm, with 2 mm for tape on each side",
    value: { opening_width_mm: 30, opening_height_mm: 24, sheet_width_mm: 34, sheet_height_mm: 28 },
  },
  contacts_above: {
    summary: "The same, with the contacts along the upper edge",
    value: {
      opening_width_mm: 30,
      opening_height_mm: 24,
      sheet_width_mm: 34,
      sheet_height_mm: 28,
      contacts_edge: "top",
    },
  },
} as const satisfies Record<string, { summary: string; value: CuttingTemplateRequest }>;
