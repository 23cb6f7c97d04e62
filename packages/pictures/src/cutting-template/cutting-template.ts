/**
 * A template for a sheet behind the lens, at full size: what to cut, the opening that it covers, where tape goes and where it must not, and
 * a bar to check the print by.
 */
import type { CuttingTemplateTexts } from "@sunfathom/words";
import { linesIn } from "../sheet/lines.js";
import { type Mark, type Pen, pointsOf, type Sheet } from "../sheet/sheet.js";
import { widthOf } from "../text/measure.js";
import { type Area, hatched } from "./hatched.js";

/** Sizes of what is cut and what is covered, mm, and the edge with the contacts. */
export interface CuttingTemplate {
  sheet_width_mm: number;
  sheet_height_mm: number;
  opening_width_mm: number;
  opening_height_mm: number;
  contacts_edge: "top" | "bottom" | "left" | "right" | "none";
}

/** A4, portrait. ISO 216. */
const WIDTH = pointsOf(210);
const HEIGHT = pointsOf(297);
const MARGIN = pointsOf(15);
const INNER = WIDTH - 2 * MARGIN;
const SIZE = 12;
const HEAD = 18;
const BLACK = "#000000";
const COLOUR = "#0b47a1";
const BAR = pointsOf(50);
/** How far the zone for the contacts reaches out from the sheet's edge: from memory of mounts. */
const CONTACTS = pointsOf(5);

const CUT: Pen = { stroke: BLACK, stroke_width: 0.6 };
const OPENING: Pen = { stroke: BLACK, stroke_width: 0.6, dashes: [4, 2.5] };
const TAPE: Pen = { stroke: COLOUR, stroke_width: 0.5 };
const KEEP_OFF: Pen = { stroke: BLACK, stroke_width: 0.5 };

/** Opening in the middle of the sheet, as points from the page's corner. */
function areas({ sheet_width_mm, sheet_height_mm, ...t }: CuttingTemplate, top: number) {
  const [width, height] = [pointsOf(sheet_width_mm), pointsOf(sheet_height_mm)];
  const [inWidth, inHeight] = [pointsOf(t.opening_width_mm), pointsOf(t.opening_height_mm)];
  const sheet: Area = { x: (WIDTH - width) / 2, y: top, width, height };
  const opening: Area = {
    x: sheet.x + (width - inWidth) / 2,
    y: top + (height - inHeight) / 2,
    width: inWidth,
    height: inHeight,
  };
  return { sheet, opening };
}

/** Strips of the sheet beside the opening, without the one at the contacts. */
function tapeZones(sheet: Area, opening: Area, edge: CuttingTemplate["contacts_edge"]): Area[] {
  const below = opening.y + opening.height;
  const right = opening.x + opening.width;
  const strips = {
    top: { ...sheet, height: opening.y - sheet.y },
    bottom: { ...sheet, y: below, height: sheet.y + sheet.height - below },
    left: { x: sheet.x, y: opening.y, width: opening.x - sheet.x, height: opening.height },
    right: { x: right, y: opening.y, width: sheet.x + sheet.width - right, height: opening.height },
  };
  return Object.entries(strips).flatMap(([name, strip]) => (name === edge ? [] : [strip]));
}

/** Beyond the sheet's edge at the contacts. */
function keepOff(sheet: Area, edge: CuttingTemplate["contacts_edge"]): Area | undefined {
  switch (edge) {
    case "top":
      return { ...sheet, y: sheet.y - CONTACTS, height: CONTACTS };
    case "bottom":
      return { ...sheet, y: sheet.y + sheet.height, height: CONTACTS };
    case "left":
      return { ...sheet, x: sheet.x - CONTACTS, width: CONTACTS };
    case "right":
      return { ...sheet, x: sheet.x + sheet.width, width: CONTACTS };
    case "none":
      return undefined;
  }
}

const outline = (area: Area, pen: Pen): Mark => ({ kind: "rectangle", ...area, pen });

/** A bar of 50 mm with its ends marked, and what it is. */
function bar(y: number, text: string): Mark[] {
  const x = (WIDTH - BAR) / 2;
  const pen: Pen = { stroke: BLACK, stroke_width: 0.8 };
  const end = (at: number): Mark => ({ kind: "line", from: [at, y - 6], to: [at, y + 6], pen });
  return [
    { kind: "line", from: [x, y], to: [x + BAR, y], pen },
    end(x),
    end(x + BAR),
    ...linesIn(text, { size: SIZE, fill: BLACK, width: BAR }).at(x + (BAR - widthOf(text, SIZE)) / 2, y + 8),
  ];
}

export function drawCuttingTemplate(template: CuttingTemplate, texts: CuttingTemplateTexts): Sheet {
  const marks: Mark[] = [];
  let y = MARGIN;
  const say = (text: string, options: { size?: number; bold?: boolean; indent?: number } = {}) => {
    const { size = SIZE, bold = false, indent = 0 } = options;
    const lines = linesIn(text, {
      size,
      weight: bold ? "semibold" : "regular",
      fill: BLACK,
      width: INNER - indent,
    });
    marks.push(...lines.at(MARGIN + indent, y));
    y += lines.height;
  };
  const numbers = {
    sheet: [template.sheet_width_mm, template.sheet_height_mm],
    opening: [template.opening_width_mm, template.opening_height_mm],
  } as const;
  say(texts.title, { size: HEAD, bold: true });
  say(texts.sizes(numbers));
  y += 6;
  for (const [i, step] of texts.steps.entries()) say(`${i + 1}. ${step}`, { bold: true });
  y += pointsOf(9);
  marks.push(...bar(y, texts.bar));
  y += pointsOf(9) + CONTACTS;
  const { sheet, opening } = areas(template, y);
  const edge = template.contacts_edge;
  const zone = keepOff(sheet, edge);
  marks.push(
    ...tapeZones(sheet, opening, edge).flatMap((strip) => hatched(strip, TAPE)),
    ...(zone === undefined ? [] : [...hatched(zone, KEEP_OFF, "crossed"), outline(zone, KEEP_OFF)]),
    outline(opening, OPENING),
    outline(sheet, CUT),
  );
  y += sheet.height + CONTACTS + pointsOf(5);
  for (const [text, pen, fill] of [
    [texts.cut, CUT, undefined],
    [texts.opening, OPENING, undefined],
    [texts.tape, TAPE, "once"],
    ...(zone === undefined ? [] : [[texts.contacts, KEEP_OFF, "crossed"] as const]),
  ] as const) {
    const sample: Area = { x: MARGIN, y: y + 1, width: 26, height: 11 };
    marks.push(...(fill === undefined ? [] : hatched(sample, pen, fill)), outline(sample, pen));
    say(text, { indent: 34 });
    y += 3;
  }
  y += 6;
  for (const caution of texts.cautions) say(caution);
  return { width: WIDTH, height: HEIGHT, title: texts.title, description: texts.description(numbers), marks };
}
