/** Colours for screens: IEC 61966-2-1 (sRGB). What a screen cannot show is cut to what it can, channel by channel. */
import type { LinearRgb } from "@sunfathom/planner";

const encoded = (linear: number): number => {
  const held = Math.min(1, Math.max(0, linear));
  return held <= 0.0031308 ? 12.92 * held : 1.055 * held ** (1 / 2.4) - 0.055;
};

/** Red, green and blue as bytes, of linear ones. */
export const bytesOf = (colour: LinearRgb): number[] =>
  colour.map((linear) => Math.round(255 * encoded(linear)));

/** `#rrggbb` of linear red, green and blue. */
export const hexOf = (colour: LinearRgb): string =>
  `#${bytesOf(colour)
    .map((byte) => byte.toString(16).padStart(2, "0"))
    .join("")}`;

/** Whether black is read better on a colour than white is: by their contrasts after WCAG 2.2. */
export function isLight([red, green, blue]: LinearRgb): boolean {
  const held = (linear: number): number => Math.min(1, Math.max(0, linear));
  const luminance = 0.2126 * held(red) + 0.7152 * held(green) + 0.0722 * held(blue);
  // Where (1.05 / (L + 0.05)) equals ((L + 0.05) / 0.05).
  return luminance > Math.sqrt(1.05 * 0.05) - 0.05;
}
