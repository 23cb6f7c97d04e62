// Guards how lists are said.
import { expect, it } from "vitest";
import { spoken } from "./list.js";

it("a list is said with commas, and an and before its last", () => {
  expect([[], ["one"], ["one", "two"], ["one", "two", "three"]].map(spoken)).toEqual([
    "",
    "one",
    "one and two",
    "one, two and three",
  ]);
});
