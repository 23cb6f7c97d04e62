import { checkpoint, member } from "@sunfathom/answers";

/** So many take a millisecond or two at the most. */
const charactersPerLook = 16 * 1024;

/**
 * The first name that stands twice in one object of a JSON text, as a pointer (RFC 6901); undefined where none does.
 * JSON.parse keeps the last of its values without a word, and another reader may keep the first (RFC 8259, section 4).
 * @param text valid JSON: nothing is checked here
 */
export function repeatedName(text: string): string | undefined {
  /** Of each container that is open the names met so far; of a list, which has none, nothing. */
  const open: (Set<string> | undefined)[] = [];
  /** The way to what is read: a name or an index for each open container. */
  const steps: string[] = [];
  let names: Set<string> | undefined;
  let expectsName = false;
  let next = 0;
  for (let at = 0; at < text.length; at += 1) {
    if (at >= next) {
      checkpoint();
      next = at + charactersPerLook;
    }
    switch (text.charCodeAt(at)) {
      case quote: {
        const end = endOfString(text, at);
        if (expectsName && names !== undefined) {
          const name = nameIn(text, at, end);
          steps[open.length - 1] = name;
          if (names.has(name)) return steps.slice(0, open.length).reduce(member, "");
          names.add(name);
          expectsName = false;
        }
        at = end;
        break;
      }
      case comma:
        expectsName = names !== undefined;
        if (names === undefined) {
          const index = open.length - 1;
          steps[index] = String(Number(steps[index]) + 1);
        }
        break;
      case openBrace:
        names = new Set();
        open.push(names);
        expectsName = true;
        break;
      case openBracket:
        names = undefined;
        open.push(undefined);
        steps[open.length - 1] = "0";
        break;
      case closeBrace:
      case closeBracket:
        open.pop();
        names = open[open.length - 1];
        expectsName = false;
        break;
    }
  }
  return undefined;
}

const quote = 0x22;
const comma = 0x2c;
const openBracket = 0x5b;
const closeBracket = 0x5d;
const openBrace = 0x7b;
const closeBrace = 0x7d;

/** Place of the quote that ends the string whose first quote stands at `start`. */
function endOfString(text: string, start: number): number {
  let end = text.indexOf('"', start + 1);
  while (isEscaped(text, end)) end = text.indexOf('"', end + 1);
  return end;
}

function isEscaped(text: string, at: number): boolean {
  let first = at;
  while (text[first - 1] === "\\") first -= 1;
  return (at - first) % 2 === 1;
}

function nameIn(text: string, start: number, end: number): string {
  const raw = text.slice(start + 1, end);
  return raw.includes("\\") ? String(JSON.parse(`"${raw}"`)) : raw;
}
