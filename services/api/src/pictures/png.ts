import { createRequire } from "node:module";

const require = createRequire(import.meta.url);

/** The one family that texts are drawn in: without these files they would vanish in silence. Licence: SIL OFL 1.1. */
const FAMILY = "Inter";
const FONT = "@expo-google-fonts/inter";
const fontFiles = ["400Regular/Inter_400Regular.ttf", "600SemiBold/Inter_600SemiBold.ttf"].map((file) =>
  require.resolve(`${FONT}/${file}`),
);

const versionOf = (name: string): string =>
  `${name}@${(require(`${name}/package.json`) as { version: string }).version}`;

/** What else than the picture decides the bytes of a PNG. */
export const pngMaker = [versionOf("@resvg/resvg-js"), versionOf(FONT)].join(" ");

/** An SVG as PNG, as wide as it says. */
export function pngOf(svg: string): Uint8Array {
  // Loaded with the first picture: a thread that draws none does without.
  const { Resvg } = require("@resvg/resvg-js") as typeof import("@resvg/resvg-js");
  const font = { loadSystemFonts: false, fontFiles, defaultFontFamily: FAMILY };
  return new Resvg(svg, { font, fitTo: { mode: "original" } }).render().asPng();
}
