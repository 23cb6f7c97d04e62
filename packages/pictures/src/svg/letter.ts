import type { Look } from "../look.js";
import { type Element, el } from "./element.js";

/** A letter in a disc of a colour of its own. */
export function letterAt(
  letter: string,
  { x, y }: { x: number; y: number },
  { colours, small }: Look,
  disc: string,
): Element[] {
  return [
    el("circle", { cx: x, cy: y, r: 0.8 * small, fill: disc }),
    el(
      "text",
      {
        x,
        y: y + 0.36 * small,
        "text-anchor": "middle",
        "font-size": small,
        "font-weight": 600,
        fill: colours.ground,
      },
      letter,
    ),
  ];
}
