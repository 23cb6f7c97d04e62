import type { LinearRgb } from "@sunfathom/planner";
import type { Theme } from "../theme.js";

/** Colours of errors, the larger the darker, from none to `END_DELTA_E00` and more: sRGB in bytes. On paper they are greys. */
const STOPS: Readonly<Record<Theme, readonly (readonly [number, number, number])[]>> = {
  light: [
    [250, 246, 232],
    [240, 190, 98],
    [178, 78, 38],
    [92, 16, 24],
  ],
  dark: [
    [250, 246, 232],
    [240, 190, 98],
    [178, 78, 38],
    [92, 16, 24],
  ],
  print: [
    [255, 255, 255],
    [205, 205, 205],
    [135, 135, 135],
    [60, 60, 60],
  ],
};
const END_DELTA_E00 = 24;

const linear = (byte: number): number => {
  const encoded = byte / 255;
  return encoded <= 0.04045 ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4;
};

/** The colour of an error. */
export function errorColour(delta_e00: number, theme: Theme): LinearRgb {
  const stops = STOPS[theme];
  const place = (Math.min(1, Math.max(0, delta_e00 / END_DELTA_E00)) * (stops.length - 1)) as number;
  const first = Math.min(stops.length - 2, Math.floor(place));
  const share = place - first;
  const [from, to] = [stops[first] ?? [0, 0, 0], stops[first + 1] ?? [0, 0, 0]];
  const at = (k: 0 | 1 | 2): number => linear(from[k] + share * (to[k] - from[k]));
  return [at(0), at(1), at(2)];
}
