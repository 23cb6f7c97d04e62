// Guards how lists are said.
import { expect, it } from "vitest";
import { depths, spoken } from "./list.js";

it("a list is said with commas, and an and before its last", () => {
  expect([[], ["one"], ["one", "two"], ["one", "two", "three"]].map(spoken)).toEqual([
    "",
    "one",
    "one and two",
    "one, two and three",
  ]);
});

it("depths are said as a diver can hit them, each and their unit once", () => {
  expect(depths([3.4, 7.68, 9.14, 9.4])).toBe("3.5, 8 and 9 m");
  expect(depths([5])).toBe("5 m");
});
