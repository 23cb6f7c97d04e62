import type { Look } from "../look.js";
import { linesOf, type Weight } from "../text/measure.js";
import { type Element, el, write } from "./element.js";

/** Something that takes the whole width, and so much height. */
export interface Block {
  height: number;
  /** Draws it with its upper edge there. */
  at: (y: number) => Element[];
}

export const FONT = "Inter, 'Helvetica Neue', Arial, sans-serif";
const LEADING = 1.32;

interface Said {
  text: string;
  size: number;
  weight?: Weight;
  fill: string;
  /** Left edge. */
  x: number;
  width: number;
}

/** A text over as many lines as it takes. */
export function paragraph({ text, size, weight = "regular", fill, x, width }: Said): Block {
  const lines = linesOf(text, size, width, weight);
  return {
    height: lines.length * size * LEADING,
    at: (y) =>
      lines.map((line, i) =>
        el(
          "text",
          {
            x,
            y: y + size * (LEADING * i + 1),
            "font-size": size,
            fill,
            ...(weight === "semibold" ? { "font-weight": 600 } : {}),
          },
          line,
        ),
      ),
  };
}

export const gap = (height: number): Block => ({ height, at: () => [] });

/** One block below the other. */
export const stacked = (blocks: readonly Block[]): Block => ({
  height: blocks.reduce((sum, { height }) => sum + height, 0),
  at: (y) => {
    let top = y;
    return blocks.flatMap((block) => {
      const drawn = block.at(top);
      top += block.height;
      return drawn;
    });
  },
});

/** What a picture says to whoever does not see it. */
export interface Told {
  title: string;
  description: string;
}

/** A picture of blocks one below the other, as a complete SVG document. */
export function page(look: Look, { title, description }: Told, blocks: readonly Block[]): string {
  const all = stacked(blocks);
  const height = Math.ceil(all.height + 2 * look.margin);
  return write(
    el(
      "svg",
      {
        xmlns: "http://www.w3.org/2000/svg",
        viewBox: `0 0 ${look.width} ${height}`,
        width: look.width,
        height,
        role: "img",
        "font-family": FONT,
      },
      el("title", {}, title),
      el("desc", {}, description),
      el("rect", { width: look.width, height, fill: look.colours.ground }),
      ...all.at(look.margin),
    ),
  );
}
