// Sizes in the PDF's own coordinates, read by a library of its own.
import { drawCuttingTemplate, mmOf } from "@sunfathom/pictures";
import { pictures } from "@sunfathom/words/en";
import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, it } from "vitest";
import { pdfOf } from "./pdf.js";

const sizes = [
  [30, 24, 34, 28],
  [43.5, 31.2, 47.5, 35.2],
  [5, 5, 7, 7],
  [100, 110, 120, 120],
] as const;

describe.each(sizes)("a template for an opening of %d by %d mm, a sheet of %d by %d", (...given) => {
  const [opening_width_mm, opening_height_mm, sheet_width_mm, sheet_height_mm] = given;
  const template = { opening_width_mm, opening_height_mm, sheet_width_mm, sheet_height_mm } as const;
  const sheet = drawCuttingTemplate({ ...template, contacts_edge: "bottom" }, pictures.cutting_template);

  it("has its lines where they are said to be, within 0.2 mm, on one page of A4", async () => {
    const pdf = await getDocument({ data: Uint8Array.from(pdfOf(sheet, "en")), verbosity: 0 }).promise;
    expect(pdf.numPages).toBe(1);
    const page = await pdf.getPage(1);
    // ISO 216: A4 is 210 by 297 mm. A unit is 1/72 inch unless the page says another (ISO 32000-2, 14.11.2).
    expect(page.userUnit).toBe(1);
    const [, , right = 0, top = 0] = page.view;
    expect([mmOf(right), mmOf(top)]).toEqual([expect.closeTo(210, 1), expect.closeTo(297, 1)]);
    const { fnArray, argsArray } = await page.getOperatorList();
    // The only change of scale turns the page upside down.
    const scales = argsArray.filter((_, i) => fnArray[i] === OPS.transform).map(([a, , , d]) => [a, d]);
    for (const [a, d] of scales) expect([Math.abs(a), Math.abs(d)]).toEqual([1, 1]);
    const drawn = argsArray
      .filter((_, i) => fnArray[i] === OPS.constructPath)
      .map(([, , box]) => [mmOf(box[2] - box[0]), mmOf(box[3] - box[1])] as const);
    const has = (width: number, height: number) =>
      drawn.some(([w, h]) => Math.abs(w - width) < 0.2 && Math.abs(h - height) < 0.2);
    expect(has(sheet_width_mm, sheet_height_mm)).toBe(true);
    expect(has(opening_width_mm, opening_height_mm)).toBe(true);
    expect(has(50, 0)).toBe(true);
    // So that the test would tell.
    expect(has(sheet_width_mm + 0.5, sheet_height_mm)).toBe(false);
  });

  it("has the same bytes each time", () => {
    expect(Buffer.from(pdfOf(sheet, "en")).equals(pdfOf(sheet, "en"))).toBe(true);
  });
});
