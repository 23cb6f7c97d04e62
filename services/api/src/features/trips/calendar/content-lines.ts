/** Lines of a calendar, as RFC 5545 writes them. */

/** Octets of a line, its end aside (section 3.1). */
const longest = 75;

/**
 * A text as a value (section 3.3.11). Characters that control something have no place in it; of these a line's end alone is kept, as one.
 */
export const escaped = (text: string): string =>
  text
    .replaceAll("\r\n", "\n")
    .replace(/[\\;,]/g, (character) => `\\${character}`)
    .replace(/[\n\r\u2028\u2029]/g, "\\n")
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not come through
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, " ");

/** A value of a parameter (section 3.2): quoted where it has what would end it, which leaves no way to say a quote. */
export function quoted(value: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not come through
  const plain = value.replace(/[\u0000-\u001f\u007f"]/g, " ");
  return /[:;,]/.test(plain) ? `"${plain}"` : plain;
}

/** A line in as many as it takes (section 3.1): none longer than 75 octets, no character cut in two. */
export function folded(line: string): string {
  const lines: string[] = [];
  let current = "";
  let octets = 0;
  for (const character of line) {
    const size = Buffer.byteLength(character);
    if (octets + size > longest) {
      lines.push(current);
      // The blank that says that the line goes on counts, too.
      current = " ";
      octets = 1;
    }
    current += character;
    octets += size;
  }
  return [...lines, current].join("\r\n");
}

/** All lines, each with its end. */
export const written = (lines: readonly string[]): string =>
  lines.map((line) => `${folded(line)}\r\n`).join("");
