import { besideKitDives, largestExactKit, mostRingsInARow } from "@sunfathom/contract";
import { LARGEST_EXACT, MOST_RINGS_IN_A_ROW } from "@sunfathom/planner";
import { expect, it } from "vitest";
import { byId } from "./pieces.js";

it("says in its description what the planner keeps to", () => {
  expect(largestExactKit).toBe(LARGEST_EXACT);
  expect(mostRingsInARow).toBe(MOST_RINGS_IN_A_ROW);
  expect(new Set(besideKitDives).size).toBe(besideKitDives.length);
});

it("puts ids in one order, whatever order they come in", () => {
  const ids = (list: { id: string }[]) => byId(list).map(({ asked: { id }, place }) => [id, place]);
  expect(ids([{ id: "b" }, { id: "Z" }, { id: "a" }])).toEqual([
    ["Z", 1],
    ["a", 2],
    ["b", 0],
  ]);
});
