import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { log2 } from "./log2.js";

describe("log2 of hot loops", () => {
  it("is Math.log2 to 1e-14, from the least normal number to the greatest", () => {
    fc.assert(
      fc.property(fc.double({ min: 2 ** -1022, max: Number.MAX_VALUE, noNaN: true }), (x) => {
        const expected = Math.log2(x);
        expect(Math.abs(log2(x) - expected)).toBeLessThanOrEqual(1e-14 * Math.max(1, Math.abs(expected)));
      }),
      { seed: 1985, numRuns: 5000 },
    );
  });

  it("is exact to 1e-15 about 1, where losses are small", () => {
    for (const x of [0.99, 1 - 2 ** -53, 1, 1 + 2 ** -52, 1.01, 2, 0.5]) {
      expect(Math.abs(log2(x) - Math.log2(x))).toBeLessThan(1e-15);
    }
  });

  it("says what Math.log2 says of all that has no logarithm, and of the smallest numbers", () => {
    for (const x of [0, -0, -1, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 5e-324]) {
      expect(log2(x)).toBe(Math.log2(x));
    }
  });
});
