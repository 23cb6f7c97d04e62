import type { Look } from "../look.js";
import { type Element, el } from "./element.js";
import { keyed } from "./keyed.js";
import type { Block } from "./page.js";

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

/** What the bar means. */
export function diveKey(look: Look, text: string): Block {
  const { size, stroke, colours } = look;
  return keyed(look, text, (x, y) => [
    el("rect", {
      x: x - stroke,
      y: y - 0.6 * size,
      width: 2 * stroke,
      height: 1.2 * size,
      fill: colours.accent,
    }),
  ]);
}
