import { describe, expect, it } from "vitest";
import { WAVELENGTHS_NM } from "./grid.js";
import { evenly, unpack } from "./packed.js";

describe("packed tables", () => {
  it("say evenly spaced numbers by their rule", () => {
    expect(evenly(380, 5, 81)).toEqual(Array.from(WAVELENGTHS_NM));
    expect(evenly(1, 0.5, 3)).toEqual([1, 1.5, 2]);
    expect(evenly(1, 1, 0)).toEqual([]);
  });

  // Differences worked out by hand: 1.00 1.05 1.02 2.13 are +0.05, -0.03, +1.11, and those differ by -0.08 and +1.14. Of 100,
  // the count is 200, 6 times 30 and 20: the sixth character from `(` on, and the one 20 after `a`.
  it.each([
    [0, "-u.a-y5g"],
    [1, "-ukf.m"],
    [2, "-ukp.s"],
  ])("say numbers as differences taken %d times", (order, differences) => {
    expect(unpack(2, order, differences)).toEqual([1, 1.05, 1.02, 2.13]);
  });

  it("give numbers as they are written, to the last bit", () => {
    expect(unpack(1, 0, "gn")).toEqual([0.3, -0.7]);
    expect(unpack(20, 0, "c")).toEqual([1e-20]);
    expect(unpack(3, 1, "")).toEqual([]);
    // The last count of one character, the first and last of the highest before it, and the first of three.
    expect(unpack(0, 0, "~[a[~((a")).toEqual([-15, 780, -795, 795]);
  });
});
