import { checkpoint } from "@sunfathom/answers";

/** So many take some tens of microseconds. */
const charactersPerLook = 16 * 1024;

/** Whether lists and objects of a JSON text stand more than `most` deep in each other. Of a text that is no JSON it may say either. */
export function isDeep(text: string, most: number): boolean {
  let depth = 0;
  let isInString = false;
  for (let at = 0; at < text.length; at += 1) {
    if (at % charactersPerLook === 0) checkpoint();
    const character = text.charCodeAt(at);
    if (isInString) {
      if (character === quote) isInString = false;
      // What is escaped ends nothing.
      else if (character === backslash) at += 1;
    } else if (character === quote) isInString = true;
    else if (character === openBracket || character === openBrace) {
      depth += 1;
      if (depth > most) return true;
    } else if (character === closeBracket || character === closeBrace) depth -= 1;
  }
  return false;
}

const quote = 0x22;
const openBracket = 0x5b;
const backslash = 0x5c;
const closeBracket = 0x5d;
const openBrace = 0x7b;
const closeBrace = 0x7d;
