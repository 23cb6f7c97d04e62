import { checkRequest } from "@sunfathom/answers";
import {
  type CuttingTemplateRequest,
  cuttingTemplateExamples,
  leastTape_mm,
  sheetLimits_mm,
} from "@sunfathom/contract";
import { drawCuttingTemplate, sheetSvg } from "@sunfathom/pictures";
import { pdfMaker, pdfOf, setting } from "./pdf.js";
import type { SheetOperation } from "./sheet-operation.js";

/** Hatched all over it is drawn in a millisecond or two. */
const drawing = 6;

/** A sheet that leaves nothing to tape, or none at all, by its place. */
function tooSmall({ opening_width_mm, opening_height_mm, ...sheet }: CuttingTemplateRequest) {
  return (
    [
      ["sheet_width_mm", opening_width_mm],
      ["sheet_height_mm", opening_height_mm],
    ] as const
  )
    .filter(([field, opening]) => sheet[field] < opening + 2 * leastTape_mm)
    .map(([field, opening]) => ({
      pointer: `/${field}`,
      value: sheet[field],
      minimum: opening + 2 * leastTape_mm,
      maximum: sheetLimits_mm.max,
      unit: "mm" as const,
    }));
}

/** A sheet behind the lens, to cut along the lines. */
export const cuttingTemplates: SheetOperation = {
  name: "cutting-templates",
  operationId: "renderCuttingTemplate",
  summary: "A template for a sheet behind the lens, at full size",
  description:
    "From the opening that you measured behind the lens and the size of the sheet: its outline, the opening within it, where tape goes, where sheet and tape keep off the contacts, and a bar of 50 mm to check the print by. Measure before you cut, and practise on a cheap sheet first. The file is true to size within 0.2 mm; the bar tells what the printer made of it.",
  look: "CuttingTemplateLook",
  types: { pdf: "application/pdf", svg: "image/svg+xml" },
  makers: { pdf: pdfMaker, svg: "" },
  request: "CuttingTemplateRequest",
  reader: { component: "CuttingTemplateRequest" },
  examples: cuttingTemplateExamples,
  prepare: ({ language, problems, pictures }, body, format) => {
    const checked = checkRequest<CuttingTemplateRequest>("CuttingTemplateRequest", body, problems, tooSmall);
    if ("problem" in checked) return { status: "problem", problem: checked.problem };
    const { language: _, contacts_edge = "bottom", ...sizes } = checked.request;
    return {
      status: "ready",
      canonical: JSON.stringify([
        sizes.opening_width_mm,
        sizes.opening_height_mm,
        sizes.sheet_width_mm,
        sizes.sheet_height_mm,
        contacts_edge,
      ]),
      scene: sizes,
      cost: drawing + (format === "pdf" ? setting : 0),
      make: () => {
        const sheet = drawCuttingTemplate({ ...sizes, contacts_edge }, pictures.cutting_template);
        const bytes = format === "pdf" ? pdfOf(sheet, language) : Buffer.from(sheetSvg(sheet));
        return { status: "ok", bytes: Uint8Array.from(bytes) };
      },
    };
  },
};
