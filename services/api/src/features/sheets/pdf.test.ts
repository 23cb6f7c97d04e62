// The PDF, read by a library of its own.

import { NIGHT_WRECK, OUTER_REEF_MORNING } from "@sunfathom/fixtures/scenes";
import { mmOf, slateOf } from "@sunfathom/pictures";
import { pictures as de } from "@sunfathom/words/de";
import { pictures as en } from "@sunfathom/words/en";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, it } from "vitest";
import { pdfOf } from "./pdf.js";

describe.each([
  ["en", slateOf(OUTER_REEF_MORNING, en.slate)],
  ["de", slateOf(NIGHT_WRECK, de.slate)],
] as const)("a slate in %s as PDF", (language, sheet) => {
  const bytes = pdfOf(sheet, language);
  const open = () => getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;

  it("is one page of A5, landscape", async () => {
    const pdf = await open();
    expect(pdf.numPages).toBe(1);
    const [left, top, right, bottom] = (await pdf.getPage(1)).view;
    expect([left, top]).toEqual([0, 0]);
    expect([mmOf(right ?? 0), mmOf(bottom ?? 0)]).toEqual([expect.closeTo(210, 2), expect.closeTo(148, 2)]);
  });

  it("has its texts as text, each where it is meant to be and no wider", async () => {
    const page = await (await open()).getPage(1);
    const { items } = await page.getTextContent();
    const lines: { text: string; x: number; y: number; right: number }[] = [];
    for (const item of items) {
      if (!("str" in item) || item.str.trim() === "") continue;
      const [, , , , x, y] = item.transform;
      const last = lines.at(-1);
      // Where letters are set closer together, the library begins another piece of the same line.
      const goesOn = last !== undefined && Math.abs(last.y - y) < 0.01 && Math.abs(last.right - x) < 6;
      if (goesOn) Object.assign(last, { text: last.text + item.str, right: x + item.width });
      else lines.push({ text: item.str, x, y, right: x + item.width });
    }
    const meant = sheet.marks.filter((mark) => mark.kind === "text");
    const bare = (text: string) => text.replaceAll(/\s/g, "");
    expect(lines.map(({ text }) => bare(text))).toEqual(meant.map(({ text }) => bare(text)));
    for (const [i, { x, y, right }] of lines.entries()) {
      expect(x).toBeCloseTo(meant[i]?.x ?? Number.NaN, 2);
      expect(sheet.height - y).toBeCloseTo(meant[i]?.y ?? Number.NaN, 2);
      expect(right).toBeLessThan(sheet.width - 18);
    }
  });

  it("says what it is, and in which language", async () => {
    const { info } = await (await open()).getMetadata();
    expect(info).toMatchObject({ Title: sheet.title, Language: language });
  });

  it("has the same bytes each time", () => {
    expect(Buffer.from(pdfOf(sheet, language)).equals(bytes)).toBe(true);
  });
});
