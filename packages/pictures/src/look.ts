import type { TextUnits } from "@sunfathom/words";
import { COLOURS, type Colours, type Theme } from "./theme.js";

/** Widths that pictures are drawn for, in CSS pixels. */
export const LEAST_WIDTH_PX = 320;
export const MOST_WIDTH_PX = 1600;

/** How a picture is to be drawn. */
export interface LookAsked {
  width_px: number;
  theme: Theme;
  /** Of lengths in its texts; metric when left out. */
  units?: TextUnits;
}

/** Sizes and colours that follow from it. */
export interface Look {
  width: number;
  colours: Colours;
  /** Of a line of text, px. */
  size: number;
  /** Of a headline. */
  headline: number;
  /** Of notes. */
  small: number;
  /** Around all. */
  margin: number;
  stroke: number;
  units: TextUnits;
}

export function lookOf({ width_px, theme, units = "metric" }: LookAsked): Look {
  const size = Math.min(24, Math.max(13, 10.4 + width_px / 140));
  return {
    width: width_px,
    colours: COLOURS[theme],
    size,
    headline: 1.35 * size,
    small: Math.max(12, 0.88 * size),
    margin: Math.max(14, width_px / 40),
    stroke: Math.max(2, size / 7),
    units,
  };
}
