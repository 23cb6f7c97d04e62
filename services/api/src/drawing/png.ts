import { createRequire } from "node:module";
import { encode } from "fast-png";
import { versionOf } from "./version-of.js";

const require = createRequire(import.meta.url);

/** The one family that texts are drawn in: without these files they would vanish in silence. Licence: SIL OFL 1.1. */
const FAMILY = "Inter";
const FONT = "@expo-google-fonts/inter";
export const fontFiles = ["400Regular/Inter_400Regular.ttf", "600SemiBold/Inter_600SemiBold.ttf"].map(
  (file) => require.resolve(`${FONT}/${file}`),
);

/** What else than the picture decides the bytes of a PNG. */
export const pngMaker = [
  versionOf("@resvg/resvg-js"),
  versionOf(FONT, `${FONT}/package.json`),
  versionOf("fast-png"),
].join(" ");

/** An SVG as PNG, as wide as it says, or so many pixels wide. */
export function pngOf(svg: string, width_px?: number): Uint8Array {
  // Loaded with the first picture: a thread that draws none does without.
  const { Resvg } = require("@resvg/resvg-js") as typeof import("@resvg/resvg-js");
  const font = { loadSystemFonts: false, fontFiles, defaultFontFamily: FAMILY };
  const fitTo =
    width_px === undefined ? { mode: "original" as const } : { mode: "width" as const, value: width_px };
  const { width, height, pixels } = new Resvg(svg, { font, fitTo }).render();
  return encode({ width, height, data: opaque(pixels), channels: 3, depth: 8 }, { zlib: { level: 3 } });
}

/** Pixels without their fourth channel: a picture lets nothing through. Packed so, it takes half the bytes of what resvg writes. */
function opaque(rgba: Uint8Array): Uint8Array {
  const rgb = new Uint8Array((rgba.length / 4) * 3);
  for (let to = 0; to < rgb.length; to++) rgb[to] = rgba[to + Math.floor(to / 3)] ?? 0;
  return rgb;
}
