import { linesOf, type Weight } from "../text/measure.js";
import type { SheetText } from "./sheet.js";

/** Of a line of text, in its size. */
const LEADING = 1.18;
/** From the upper edge of a line to its baseline. */
const ASCENT = 0.95;

interface Written {
  size: number;
  weight?: Weight;
  fill: string;
  width: number;
}

export interface Lines {
  height: number;
  /** With its upper left corner there. */
  at: (x: number, y: number) => SheetText[];
}

/** A text over as many lines as it takes. */
export function linesIn(text: string, { size, weight = "regular", fill, width }: Written): Lines {
  const lines = linesOf(text, size, width, weight);
  return {
    height: lines.length * size * LEADING,
    at: (x, y) =>
      lines.map((line, i) => ({
        kind: "text",
        text: line,
        x,
        y: y + size * (LEADING * i + ASCENT),
        size,
        weight,
        fill,
      })),
  };
}
