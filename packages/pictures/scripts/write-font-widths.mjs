// Writes src/text/font-widths.ts from the tables of the font that PNG are drawn with (OpenType 1.9: head, hhea, hmtx, cmap format 4).
import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";

const require = createRequire(import.meta.url);
const FIRST = 0x20;
const LAST = 0x17f;
/** What texts have beyond that: dashes, quotation marks, narrow spaces, thirds. */
const OTHERS = "\u2009\u2013\u2014\u2018\u2019\u201a\u201c\u201d\u201e\u2026\u202f\u2153\u2154\u2212";

const CODES = [
  ...Array.from({ length: LAST - FIRST + 1 }, (_, i) => FIRST + i),
  ...[...OTHERS].map((character) => character.codePointAt(0) ?? 0),
];

/** Widths in thousandths of an em, one for each code. @param {string} file */
function widthsOf(file) {
  const font = readFileSync(require.resolve(file));
  const tables = new Map();
  for (let i = 0; i < font.readUInt16BE(4); i++) {
    const at = 12 + 16 * i;
    tables.set(font.toString("latin1", at, at + 4), font.readUInt32BE(at + 8));
  }
  const unitsPerEm = font.readUInt16BE(tables.get("head") + 18);
  const longMetrics = font.readUInt16BE(tables.get("hhea") + 34);
  const cmap = tables.get("cmap");
  let map = 0;
  for (let i = 0; i < font.readUInt16BE(cmap + 2); i++) {
    const table = cmap + font.readUInt32BE(cmap + 8 + 8 * i);
    if (font.readUInt16BE(table) === 4) map = table;
  }
  const segments = font.readUInt16BE(map + 6) / 2;
  /** @param {number} code */
  const glyphOf = (code) => {
    for (let s = 0; s < segments; s++) {
      if (font.readUInt16BE(map + 14 + 2 * s) < code) continue;
      const startAt = map + 16 + 2 * segments + 2 * s;
      const start = font.readUInt16BE(startAt);
      if (start > code) return 0;
      const delta = font.readUInt16BE(startAt + 2 * segments);
      const rangeAt = startAt + 4 * segments;
      const range = font.readUInt16BE(rangeAt);
      if (range === 0) return (code + delta) & 0xffff;
      const glyph = font.readUInt16BE(rangeAt + range + 2 * (code - start));
      return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
    }
    return 0;
  };
  return CODES.map((code) => {
    const own = glyphOf(code);
    if (own === 0 && code > LAST) throw new Error(`The font has no U+${code.toString(16)}.`);
    const glyph = Math.min(own, longMetrics - 1);
    return Math.round((1000 * font.readUInt16BE(tables.get("hmtx") + 4 * glyph)) / unitsPerEm);
  });
}

const list = (/** @type {number[]} */ widths) =>
  JSON.stringify(widths.map((width) => width.toString(36)).join(" "));
const text = `// Written by scripts/write-font-widths.mjs; do not edit.

/** The first character of the tables, whose widths follow in base 36, in thousandths of an em. */
export const FIRST_CODE = ${FIRST};
/** Those that follow the last one, U+${LAST.toString(16)}. */
export const LAST_CODE = ${LAST};
export const OTHER_CHARACTERS = ${JSON.stringify(OTHERS).replaceAll(/[\u2000-\uffff]/g, (c) => `\\u${c.charCodeAt(0).toString(16)}`)};
export const REGULAR =
  ${list(widthsOf("@expo-google-fonts/inter/400Regular/Inter_400Regular.ttf"))};
export const SEMIBOLD =
  ${list(widthsOf("@expo-google-fonts/inter/600SemiBold/Inter_600SemiBold.ttf"))};
`;
writeFileSync(new URL("../src/text/font-widths.ts", import.meta.url), text);
