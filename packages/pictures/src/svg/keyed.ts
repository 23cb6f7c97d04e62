import type { Look } from "../look.js";
import type { Element } from "./element.js";
import { type Block, paragraph } from "./page.js";

/** A sign, and beside it what it means. @param sign draws it, its middle there */
export function keyed(look: Look, text: string, sign: (x: number, y: number) => readonly Element[]): Block {
  const { size, margin, width, colours } = look;
  const indent = 2.6 * size;
  const said = paragraph({
    text,
    size,
    fill: colours.text,
    x: margin + indent,
    width: width - 2 * margin - indent,
  });
  return {
    height: said.height + 0.25 * size,
    at: (y) => [...sign(margin + size, y + 0.65 * size), ...said.at(y)],
  };
}
