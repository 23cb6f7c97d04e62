import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expNegative } from "./exp-negative.js";

describe("exp(-x) of hot loops", () => {
  it("is Math.exp to 1e-13, relative, wherever light is left, and beyond", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 700, noNaN: true }), (x) => {
        expect(Math.abs(expNegative(x) / Math.exp(-x) - 1)).toBeLessThan(1e-13);
      }),
      { seed: 1970, numRuns: 5000 },
    );
  });

  it("meets the library's function at its steps, half way between them, and where it hands over to it", () => {
    for (const x of [0, 1 / 64, 1 / 32, 3 / 64, 1, 63.984375, 63.99, 64, 64.01, 745, 1e9]) {
      const expected = Math.exp(-x);
      expect(Math.abs(expNegative(x) - expected)).toBeLessThanOrEqual(1e-13 * expected);
    }
  });

  it("keeps what is not a number", () => {
    expect(expNegative(Number.NaN)).toBeNaN();
    expect(expNegative(Number.POSITIVE_INFINITY)).toBe(0);
  });
});
