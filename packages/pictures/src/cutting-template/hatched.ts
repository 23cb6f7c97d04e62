import type { Pen, SheetLine } from "../sheet/sheet.js";

export interface Area {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Between lines of a hatching, points. */
const SPACING = 5;

/** Lines at 45 degrees over an area, which they do not leave; `crossed` in both directions. */
export function hatched(area: Area, pen: Pen, how: "once" | "crossed" = "once"): SheetLine[] {
  const { x, y, width, height } = area;
  const lines: SheetLine[] = [];
  for (let at = SPACING / 2; at < width + height; at += SPACING) {
    // From the left or lower edge, up to the upper or right one.
    const low = [Math.max(0, at - height), Math.min(at, height)] as const;
    const high = [Math.min(at, width), Math.max(0, at - width)] as const;
    const line = (mirrored: boolean): SheetLine => ({
      kind: "line",
      from: [mirrored ? x + width - low[0] : x + low[0], y + low[1]],
      to: [mirrored ? x + width - high[0] : x + high[0], y + high[1]],
      pen,
    });
    lines.push(line(false), ...(how === "crossed" ? [line(true)] : []));
  }
  return lines;
}
