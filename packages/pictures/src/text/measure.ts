/**
 * How wide a text is. Measured by the font that PNG are drawn with; in an SVG the reader's own font takes its place, which may be
 * wider, so that some room is left.
 */
import { FIRST_CODE, LAST_CODE, OTHER_CHARACTERS, REGULAR, SEMIBOLD } from "./font-widths.js";

export type Weight = "regular" | "semibold";

const tableOf = (packed: string): number[] => packed.split(" ").map((width) => Number.parseInt(width, 36));
const WIDTHS: Readonly<Record<Weight, number[]>> = {
  regular: tableOf(REGULAR),
  semibold: tableOf(SEMIBOLD),
};
/** Of a character that the tables do not have: as wide as any is in scripts of this kind. */
const OTHER = 1000;
/** Room for a wider font. */
const SLACK = 1.06;

/** Where the tables have a character. */
function placeOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  if (code <= LAST_CODE) return code - FIRST_CODE;
  const other = OTHER_CHARACTERS.indexOf(character);
  return other < 0 ? -1 : LAST_CODE - FIRST_CODE + 1 + other;
}

/** Width of a text in pixels, room for another font included. */
export function widthOf(text: string, size: number, weight: Weight = "regular"): number {
  let thousandths = 0;
  for (const character of text) thousandths += WIDTHS[weight][placeOf(character)] ?? OTHER;
  return (SLACK * size * thousandths) / 1000;
}

/** A text broken into lines that fit a width, between words; a word that is too long for a line is broken itself. */
export function linesOf(text: string, size: number, width: number, weight: Weight = "regular"): string[] {
  const fits = (line: string): boolean => widthOf(line, size, weight) <= width;
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    line = "";
    for (const character of word) {
      if (line !== "" && !fits(line + character)) {
        lines.push(line);
        line = "";
      }
      line += character;
    }
  }
  return [...lines, line];
}
