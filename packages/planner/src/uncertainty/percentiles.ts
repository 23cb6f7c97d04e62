import type { Estimate } from "../result/common.js";

/** Applies a rising function to all three percentiles. */
export const mapRising = ({ low, likely, high }: Estimate, f: (x: number) => number): Estimate => ({
  low: f(low),
  likely: f(likely),
  high: f(high),
});

/** Applies a falling function: low and high change places. */
export const mapFalling = ({ low, likely, high }: Estimate, f: (x: number) => number): Estimate => ({
  low: f(high),
  likely: f(likely),
  high: f(low),
});
