import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { power, seventhPower, tenTo, twoTo } from "./powers.js";

function near(found: number, expected: number): void {
  expect(Math.abs(found / expected - 1)).toBeLessThan(1e-13);
}
const settings = { seed: 2008, numRuns: 2000 };

describe("powers of hot loops, against the language's own", () => {
  it("of two", () => {
    fc.assert(
      fc.property(fc.double({ min: -99, max: 99, noNaN: true }), (x) => near(twoTo(x), 2 ** x)),
      settings,
    );
  });

  it("of ten", () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), (x) => near(tenTo(x), 10 ** x)),
      settings,
    );
  });

  it("of any base above nothing", () => {
    const base = fc.double({ min: 1e-9, max: 1e9, noNaN: true });
    const exponent = fc.double({ min: -3, max: 3, noNaN: true });
    fc.assert(
      fc.property(base, exponent, (b, e) => near(power(b, e), b ** e)),
      settings,
    );
  });

  it("of nothing, and to nothing", () => {
    expect([power(0, 2), power(0, -2), power(7, 0), twoTo(0), tenTo(0)]).toEqual([0, Infinity, 1, 1, 1]);
  });

  it("seventh, of either sign", () => {
    fc.assert(
      fc.property(fc.double({ min: -200, max: 200, noNaN: true }), (x) => {
        if (Math.abs(x) < 1e-30) expect(Math.abs(seventhPower(x))).toBeLessThan(1e-200);
        else near(seventhPower(x), x ** 7);
      }),
      settings,
    );
  });
});
