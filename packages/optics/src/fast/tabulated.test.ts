import { describe, expect, it } from "vitest";
import { tabulated } from "./tabulated.js";

describe("a function from a table", () => {
  it("is exact for a cubic, between the nodes, at them, and a little beyond", () => {
    const cubic = (x: number) => 2 * x ** 3 - x ** 2 + 5 * x - 7;
    const fromTable = tabulated(cubic, -1, 3, 8);
    for (const x of [-1.1, -1, -0.77, -0.5, 0, 0.123, 1.5, 2.9, 3, 3.2]) {
      expect(fromTable(x)).toBeCloseTo(cubic(x), 11);
    }
  });

  it("comes closer to a sine by the fourth power of the step", () => {
    const worst = (intervals: number) => {
      const sine = tabulated(Math.sin, 0, 1, intervals);
      return Math.max(
        ...Array.from({ length: 1001 }, (_, i) => Math.abs(sine(i / 1000) - Math.sin(i / 1000))),
      );
    };
    // The error of a cubic in the middle of its four nodes is 3/128 of step^4 times the fourth derivative, at its ends 1/24.
    expect(worst(20)).toBeLessThan(1 / 20 ** 4 / 24);
    expect(worst(20) / worst(40)).toBeGreaterThan(13);
    expect(worst(20) / worst(40)).toBeLessThan(19);
  });

  it("asks nothing before it is asked", () => {
    let asked = 0;
    const fromTable = tabulated(
      (x) => {
        asked += 1;
        return x;
      },
      0,
      1,
      4,
    );
    expect(asked).toBe(0);
    expect(fromTable(0.3)).toBeCloseTo(0.3, 12);
    expect(fromTable(0.7)).toBeCloseTo(0.7, 12);
    expect(asked).toBe(5);
  });
});
