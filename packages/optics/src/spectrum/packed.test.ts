import { describe, expect, it } from "vitest";
import { WAVELENGTHS_NM } from "./grid.js";
import { evenly, unpack } from "./packed.js";

describe("packed tables", () => {
  it("say evenly spaced numbers by their rule", () => {
    expect(evenly(380, 5, 81)).toEqual(Array.from(WAVELENGTHS_NM));
    expect(evenly(1, 0.5, 3)).toEqual([1, 1.5, 2]);
    expect(evenly(1, 1, 0)).toEqual([]);
  });

  // Differences worked out by hand: 1.00 1.05 1.02 2.13 are +0.05, -0.03, +1.11, and those differ by -0.08 and +1.14.
  it.each([
    [0, "100 105 102 213"],
    [1, "100 5-3 111"],
    [2, "100 5-8 114"],
  ])("say numbers as differences taken %d times", (order, differences) => {
    expect(unpack(2, order, differences)).toEqual([1, 1.05, 1.02, 2.13]);
  });

  it("give numbers as they are written, to the last bit", () => {
    expect(unpack(1, 0, "3-7")).toEqual([0.3, -0.7]);
    expect(unpack(20, 0, "1")).toEqual([1e-20]);
    expect(unpack(3, 1, "")).toEqual([]);
  });
});
