import { pictures as de } from "@sunfathom/words/de";
import { pictures as en } from "@sunfathom/words/en";
import { pictures as es } from "@sunfathom/words/es";
import { pictures as fr } from "@sunfathom/words/fr";
import { describe, expect, it } from "vitest";
import { mmOf, type SheetText } from "../sheet/sheet.js";
import { widthOf } from "../text/measure.js";
import { type CuttingTemplate, drawCuttingTemplate } from "./cutting-template.js";
import { hatched } from "./hatched.js";

const usual: CuttingTemplate = {
  opening_width_mm: 30,
  opening_height_mm: 24,
  sheet_width_mm: 34,
  sheet_height_mm: 28,
  contacts_edge: "bottom",
};
const templates = {
  usual,
  largest: {
    opening_width_mm: 100,
    opening_height_mm: 118,
    sheet_width_mm: 120,
    sheet_height_mm: 120,
    contacts_edge: "left",
  },
  smallest: {
    opening_width_mm: 5,
    opening_height_mm: 5,
    sheet_width_mm: 7,
    sheet_height_mm: 7,
    contacts_edge: "top",
  },
  free: { ...usual, contacts_edge: "none" },
} as const satisfies Record<string, CuttingTemplate>;

describe.each(Object.entries({ en, de, es, fr }))("a template in %s", (_, { cutting_template: texts }) => {
  it.each(Object.entries(templates))(
    "%s keeps all that is on it on the page, and texts apart",
    (__, template) => {
      const { marks, width, height } = drawCuttingTemplate(template, texts);
      const boxes = marks
        .filter((mark): mark is SheetText => mark.kind === "text")
        .map(({ text, x, y, size, weight }) => ({
          text,
          left: x,
          right: x + widthOf(text, size, weight),
          top: y - 0.74 * size,
          bottom: y + 0.2 * size,
        }));
      for (const { text, left, right, top, bottom } of boxes) {
        expect(Math.min(left, top, width - right, height - bottom), text).toBeGreaterThan(20);
      }
      for (const [i, one] of boxes.entries()) {
        for (const other of boxes.slice(i + 1)) {
          const apart =
            one.right <= other.left ||
            other.right <= one.left ||
            one.bottom <= other.top ||
            other.bottom <= one.top;
          expect(apart, `${one.text} / ${other.text}`).toBe(true);
        }
      }
      const said = boxes.map(({ text }) => text).join(" ");
      for (const text of [...texts.cautions, ...texts.steps, texts.tape]) expect(said).toContain(text);
      expect(said.includes(texts.contacts)).toBe(template.contacts_edge !== "none");
    },
  );
});

it("covers the opening evenly, and keeps tape off the contacts", () => {
  const { marks } = drawCuttingTemplate(usual, en.cutting_template);
  const areas = marks.filter((mark) => mark.kind === "rectangle");
  const of = (width: number, height: number) =>
    areas.find(
      (area) => Math.abs(mmOf(area.width) - width) < 1e-9 && Math.abs(mmOf(area.height) - height) < 1e-9,
    );
  const [sheet, opening, contacts] = [of(34, 28), of(30, 24), of(34, 5)];
  if (!sheet || !opening || !contacts) throw new Error("an area is missing");
  expect(mmOf(opening.x - sheet.x)).toBeCloseTo(2, 9);
  expect(mmOf(opening.y - sheet.y)).toBeCloseTo(2, 9);
  expect(contacts.y).toBeCloseTo(sheet.y + sheet.height, 9);
  const tape = marks.filter((mark) => mark.kind === "line" && mark.pen.stroke !== "#000000");
  const within = tape.filter(
    (mark) =>
      mark.kind === "line" && mark.from[1] >= sheet.y - 1e-9 && mark.from[1] <= sheet.y + sheet.height + 1e-9,
  );
  expect(within.length).toBeGreaterThan(20);
  for (const line of within) {
    if (line.kind !== "line") continue;
    // Above the lower edge of the opening, which is the side of the contacts.
    for (const [, y] of [line.from, line.to])
      expect(y).toBeLessThanOrEqual(opening.y + opening.height + 1e-9);
  }
});

it("hatches an area without leaving it", () => {
  const area = { x: 10, y: 20, width: 40, height: 7 };
  const lines = hatched(area, { stroke: "#000000", stroke_width: 1 }, "crossed");
  expect(lines.length).toBeGreaterThan(10);
  for (const [x, y] of lines.flatMap(({ from, to }) => [from, to])) {
    expect(x).toBeGreaterThanOrEqual(10 - 1e-9);
    expect(x).toBeLessThanOrEqual(50 + 1e-9);
    expect(y).toBeGreaterThanOrEqual(20 - 1e-9);
    expect(y).toBeLessThanOrEqual(27 + 1e-9);
  }
});
