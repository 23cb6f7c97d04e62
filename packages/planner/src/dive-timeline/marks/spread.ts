/** Estimates put together from shifts of single causes, upward and downward apart, as `propagate` does. */
import type { Estimate } from "../../result/common.js";
import { Z90 } from "../../uncertainty/normal.js";

/** What one cause shifts a value by, at its 10th and at its 90th percentile. */
export type Shift = readonly [minus: number, plus: number];

/** A cause that shifts by so much a standard deviation, alike both ways. */
export const evenly = (sigma: number): Shift => [-Z90 * sigma, Z90 * sigma];

export function estimateFrom(likely: number, shifts: readonly Shift[]): Estimate {
  let [up, down] = [0, 0];
  for (const [minus, plus] of shifts) {
    up += Math.max(0, minus, plus) ** 2;
    down += Math.min(0, minus, plus) ** 2;
  }
  return { low: likely - Math.sqrt(down), likely, high: likely + Math.sqrt(up) };
}

/** Whether one may be the other: what is between them may be nothing. */
export function agrees(predicted: Estimate, measured: Estimate): boolean {
  const between = measured.likely - predicted.likely;
  const reach =
    between > 0
      ? Math.hypot(predicted.high - predicted.likely, measured.likely - measured.low)
      : Math.hypot(predicted.likely - predicted.low, measured.high - measured.likely);
  return Math.abs(between) <= reach;
}
