import fc from "fast-check";
import { expect, it } from "vitest";
import { handDepth, handDepths } from "./hand-depth.js";

it("is half a metre above 5 m and a metre below, within the range that was asked for", () => {
  const range = { min_depth_m: 0.5, max_depth_m: 30 };
  expect([0.6, 1.3, 4.8, 5.2, 5.6, 17.4].map((d) => handDepth(d, range))).toEqual([0.5, 1.5, 5, 5, 6, 17]);
  expect(handDepth(5.3, { min_depth_m: 5.3, max_depth_m: 18.7 })).toBe(6);
  expect(handDepth(18.7, { min_depth_m: 5.3, max_depth_m: 18.7 })).toBe(18);
});

it("is never deeper than a range that holds none", () => {
  expect(handDepth(14.3, { min_depth_m: 14.3, max_depth_m: 14.6 })).toBe(14);
  expect(handDepth(0.2, { min_depth_m: 0.2, max_depth_m: 0.2 })).toBe(0.5);
});

it("lists a stretch one way or the other", () => {
  expect(handDepths(3.7, 7.2)).toEqual([4, 4.5, 5, 6, 7]);
  expect(handDepths(7.2, 3.7)).toEqual([7, 6, 5, 4.5, 4]);
  expect(handDepths(14.2, 14.8)).toEqual([]);
});

it("lies within half a metre of a depth, wherever the range has room", () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 60, noNaN: true }), (depth_m) => {
      const at = handDepth(depth_m, { min_depth_m: depth_m - 1, max_depth_m: depth_m + 1 });
      expect(Math.abs(at - depth_m)).toBeLessThanOrEqual(0.5 + 1e-9);
    }),
  );
});
