// Guards that few balances go where they leave the least, against every way there is to place them.
import { expect, it } from "vitest";
import { LEAST_APART_M } from "./rebalance.js";
import { spreadAlong } from "./spread.js";

const stops = Array.from({ length: 12 }, (_, i) => 6 + i);
const mayBalance = (at: number, last: number): boolean => Math.abs(at - last) >= LEAST_APART_M;
const way = { balanced_m: 6, from_m: 6, to_m: 17, stops, mayBalance };
/** Grows by the root of the way, and twice as fast at the top: as the colour of blue water does. */
const shift = (from: number, to: number): number =>
  10 * Math.sqrt(Math.abs(to - from)) * (12 / Math.min(from, to));

const costOf = (depths: readonly number[]): number =>
  stops.reduce((sum, at) => {
    const last = [6, ...depths].filter((depth_m) => depth_m <= at).at(-1) ?? 6;
    return sum + shift(last, at) ** 2;
  }, 0);

function everyWay(most: number, last = 6): number[][] {
  if (most === 0) return [[]];
  const next = stops.filter((at) => at > last && mayBalance(at, last));
  return [[], ...next.flatMap((at) => everyWay(most - 1, at).map((more) => [at, ...more]))];
}

it("is the best of all ways", () => {
  for (const most of [1, 2, 3]) {
    const spread = spreadAlong(way, most, shift);
    const least = Math.min(...everyWay(most).map(costOf));
    expect(spread).toHaveLength(most);
    expect(costOf(spread)).toBeCloseTo(least, 6);
  }
});

it("makes none that gains nothing", () => {
  expect(spreadAlong(way, 3, () => 0)).toEqual([]);
  expect(spreadAlong(way, 3, (from) => (from < 8 ? 5 : 0))).toHaveLength(1);
});
