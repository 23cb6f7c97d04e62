import { createRequire } from "node:module";
import { Resvg } from "@resvg/resvg-js";
import { describe, expect, it } from "vitest";
import { linesOf, widthOf } from "./measure.js";

const require = createRequire(import.meta.url);
const files = {
  regular: require.resolve("@expo-google-fonts/inter/400Regular/Inter_400Regular.ttf"),
  semibold: require.resolve("@expo-google-fonts/inter/600SemiBold/Inter_600SemiBold.ttf"),
};

/** How wide a text comes out, as a renderer that reads the font itself has it. */
function inkOf(text: string, size: number, weight: "regular" | "semibold"): number {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="2000" height="100"><text x="0" y="60" font-family="Inter" font-size="${size}" font-weight="${weight === "semibold" ? 600 : 400}">${text}</text></svg>`;
  const box = new Resvg(svg, { font: { loadSystemFonts: false, fontFiles: [files[weight]] } }).getBBox();
  return box?.width ?? 0;
}

describe("the width of a text", () => {
  it.each([
    "Red down to a tenth: 6 m",
    "0123456789 %",
    "WWW iii Äöü éñ ç",
    "l’eau\u202f: 2⅓\u202fIL – 5\u202fm",
  ])("leaves the ink of %s some room, and not much", (text) => {
    for (const weight of ["regular", "semibold"] as const) {
      const ink = inkOf(text, 20, weight);
      expect(widthOf(text, 20, weight)).toBeGreaterThan(ink);
      expect(widthOf(text, 20, weight)).toBeLessThan(1.15 * ink);
    }
  });

  it("takes what its tables do not have for wide", () => {
    expect(widthOf("赤", 10)).toBeGreaterThanOrEqual(10);
  });
});

describe("lines", () => {
  it("break between words, and within one that is longer than a line", () => {
    expect(linesOf("one two three", 10, widthOf("one two", 10))).toEqual(["one two", "three"]);
    const lines = linesOf("abcdefghijklmnop", 10, 40);
    expect(lines.join("")).toBe("abcdefghijklmnop");
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(widthOf(line, 10)).toBeLessThanOrEqual(40);
  });
});
