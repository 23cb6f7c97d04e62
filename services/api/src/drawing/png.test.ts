import { Resvg } from "@resvg/resvg-js";
import { describe, expect, it } from "vitest";
import { pngMaker, pngOf } from "./png.js";

const page = (content: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="200" height="50"><rect width="200" height="50" fill="#fff"/>${content}</svg>`;
const text = (font: string, weight: number) =>
  page(`<text x="10" y="35" font-size="24" font-weight="${weight}" font-family="${font}">Red 5 m</text>`);

/** How many pixels of a PNG are dark. */
function inkOf(png: Uint8Array): number {
  const href = `data:image/png;base64,${Buffer.from(png).toString("base64")}`;
  const { pixels } = new Resvg(page(`<image width="200" height="50" href="${href}"/>`)).render();
  let ink = 0;
  for (let at = 0; at < pixels.length; at += 4) if ((pixels[at] ?? 255) < 128) ink += 1;
  return ink;
}

describe("a PNG", () => {
  it("has its texts, in the font that comes with the service", () => {
    expect(inkOf(pngOf(page("")))).toBe(0);
    const regular = inkOf(pngOf(text("Inter, Arial, sans-serif", 400)));
    expect(regular).toBeGreaterThan(200);
    // In the font's own bold, not in the same glyphs.
    expect(inkOf(pngOf(text("Inter, Arial, sans-serif", 600)))).toBeGreaterThan(1.15 * regular);
  });

  it("looks the same whatever fonts the machine has", () => {
    expect(inkOf(pngOf(text("No Such Family, sans-serif", 400)))).toBe(inkOf(pngOf(text("Inter", 400))));
  });

  it("is named after what makes it", () => {
    expect(pngMaker).toMatch(/resvg-js@2\.6\.2 .*inter@0\.4\.2 fast-png@8\.0\.0$/);
  });
});
