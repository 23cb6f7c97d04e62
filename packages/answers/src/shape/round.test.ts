import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { round } from "./round.js";

// ECMA-402: Intl.NumberFormat rounds the decimal text that it is given, exactly; `halfExpand` is half away from zero.
function oracle(value: number, decimals: number): number {
  const format = new Intl.NumberFormat("en", {
    roundingMode: "halfExpand",
    maximumFractionDigits: decimals,
    useGrouping: false,
  } as Intl.NumberFormatOptions);
  return Number(format.format(String(value) as unknown as number)) + 0;
}

describe("round", () => {
  it.each([
    [1.005, 2, 1.01],
    [-1.005, 2, -1.01],
    [2.5, 0, 3],
    [-2.5, 0, -3],
    [0.5, 0, 1],
    [8.345, 2, 8.35],
    [1.45, 1, 1.5],
    [0.285, 2, 0.29],
    [5e-7, 6, 0.000001],
    [4.9e-7, 6, 0],
    [1e-20, 3, 0],
    [0.1 + 0.2, 2, 0.3],
    [123456789.125, 2, 123456789.13],
    [1e21, 2, 1e21],
  ])("%d to %i decimals is %d", (value, decimals, rounded) => {
    expect(round(value, decimals)).toBe(rounded);
  });

  it("agrees with the platform's exact decimal rounding", () => {
    const near = fc
      .tuple(fc.integer({ min: -100000, max: 100000 }), fc.integer({ min: 1, max: 6 }))
      .map(([digits, places]) => Number(`${digits}5e-${places}`));
    fc.assert(
      fc.property(
        fc.oneof(near, fc.double({ min: -1e9, max: 1e9, noNaN: true })),
        fc.integer({ min: 0, max: 6 }),
        (value, decimals) => {
          expect(round(value, decimals)).toBe(oracle(value, decimals));
        },
      ),
      { numRuns: 5000 },
    );
  });

  it("gives no negative zero", () => {
    expect(Object.is(round(-0.001, 2), 0)).toBe(true);
    expect(Object.is(round(-0, 2), 0)).toBe(true);
  });

  it("keeps the order of numbers", () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, min: -1e6, max: 1e6 }),
        fc.double({ noNaN: true, min: -1e6, max: 1e6 }),
        (a, b) => {
          const [low, high] = a < b ? [a, b] : [b, a];
          expect(round(low, 2)).toBeLessThanOrEqual(round(high, 2));
        },
      ),
    );
  });

  it("refuses decimals that a number cannot have", () => {
    expect(() => round(1, 16)).toThrow(RangeError);
    expect(() => round(1, -1)).toThrow(RangeError);
  });
});
