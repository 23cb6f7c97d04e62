import { escapeText, textWidth } from "./chart-axis.mjs";
import { marker, stroke } from "./chart-series.mjs";

export const ROW_HEIGHT = 20;
const SWATCH = 26;

function swatch({ kind, colour, dash, shape }, x, y) {
  if (kind === "points") return [marker(shape ?? "circle", colour, x + 11, y)];
  if (kind === "band" || kind === "spans")
    return [`<rect x="${x}" y="${y - 5}" width="22" height="10" fill="${colour}" fill-opacity="0.35"/>`];
  return [`<path d="M${x},${y}h22" ${stroke(colour, dash)}/>`];
}

/** Legend entries laid out in rows of at most `width` px. @param {{label: string, kind: string, colour: string}[]} entries */
export function legendRows(entries, width) {
  let x = 0;
  let row = 0;
  const marks = entries.flatMap((entry) => {
    const need = SWATCH + Math.ceil(textWidth(entry.label)) + 14;
    if (x > 0 && x + need > width) {
      x = 0;
      row++;
    }
    const y = row * ROW_HEIGHT + 8;
    const drawn = [
      ...swatch(entry, x, y),
      `<text x="${x + SWATCH}" y="${y + 4}">${escapeText(entry.label)}</text>`,
    ];
    x += need;
    return drawn;
  });
  return { marks, rows: entries.length === 0 ? 0 : row + 1 };
}
