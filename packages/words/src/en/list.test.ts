// Guards how lists are said.
import { expect, it } from "vitest";
import { spoken, spokenDepths } from "./list.js";

it("a list is said with commas, and an and before its last", () => {
  expect([[], ["one"], ["one", "two"], ["one", "two", "three"]].map(spoken)).toEqual([
    "",
    "one",
    "one and two",
    "one, two and three",
  ]);
});

it("depths are said to a tenth, their unit once", () => {
  expect(spokenDepths([6.3, 7.68, 9.14])).toBe("6.3, 7.7 and 9.1 m");
  expect(spokenDepths([5])).toBe("5.0 m");
});
