import type { Look } from "../look.js";
import { type Element, el } from "./element.js";

/** A bar along the left edge of a picture's field, beside the depths that are filmed. */
export function diveBar(
  { x, top, bottom }: { x: number; top: number; bottom: number },
  { colours, stroke }: Look,
): Element {
  const least = 3 * stroke;
  const height = Math.max(least, bottom - top);
  return el("rect", {
    x: x - 2 * stroke,
    y: (top + bottom - height) / 2,
    width: 2 * stroke,
    height,
    fill: colours.accent,
  });
}
