import type { Look } from "../look.js";
import { type Block, paragraph } from "./page.js";

/** Texts over the whole width of a picture, by what they are. */
export function sayingsOf({ size, headline, small, margin, width, colours }: Look) {
  const inner = { x: margin, width: width - 2 * margin };
  return {
    title: (text: string): Block =>
      paragraph({ text, size: headline, weight: "semibold", fill: colours.text, ...inner }),
    head: (text: string): Block =>
      paragraph({ text, size, weight: "semibold", fill: colours.text, ...inner }),
    text: (text: string): Block => paragraph({ text, size, fill: colours.text, ...inner }),
    note: (text: string): Block => paragraph({ text, size: small, fill: colours.quiet, ...inner }),
  };
}

/** What goes to the right in a picture. */
export const axisTitle = (look: Look, text: string): Block => sayingsOf(look).note(text);
