import { expect, it } from "vitest";
import { itemAt, lastOf, lastValue, mapBoth, mapEach, nonEmpty, valueAt } from "./non-empty.js";

it("finds the ends of a list, however short", () => {
  expect(lastOf([7])).toBe(7);
  expect(lastOf([7, 8, 9])).toBe(9);
  expect(lastValue(Float64Array.of(7, 8))).toBe(8);
});

it("keeps order and places", () => {
  expect(mapEach([7, 8, 9], (item, i) => [item, i])).toEqual([
    [7, 0],
    [8, 1],
    [9, 2],
  ]);
  expect(mapBoth([1, 2], ["a", "b"], (a, b) => `${a}${b}`)).toEqual(["1a", "2b"]);
});

it("says what is missing", () => {
  expect(() => nonEmpty([], "depths")).toThrow(new RangeError("no depths"));
  expect(() => mapBoth([1, 2], [1], () => 0)).toThrow(new RangeError("2 items do not go with 1"));
  expect(() => itemAt([1], 1)).toThrow(new RangeError("no item 1 among 1"));
  expect(() => itemAt([1], -1)).toThrow(new RangeError("no item -1 among 1"));
  expect(() => valueAt(Float64Array.of(1), 1)).toThrow(new RangeError("no number 1 among 1"));
  expect(() => lastValue(new Float64Array(0))).toThrow(RangeError);
});
