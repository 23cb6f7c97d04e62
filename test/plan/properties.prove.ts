// The same as properties.test.ts, on 2000 dives (`PLANS`), each of them moved.
import { expect, it } from "vitest";
import { seededLight } from "../golden/seed-light.js";
import { tryDives } from "./properties.js";
import { seededDive } from "./seed-dive.js";

const PLANS = Number(process.env["PLANS"] ?? 2000);

it("plans can be followed, do not turn for a hair unsaid, and are seldom a close call", () => {
  const tried = [
    tryDives(seededDive, { from: 1000, count: Math.ceil(PLANS * 0.7), everyMoved: 1 }),
    tryDives((index) => seededLight(4000 + index), {
      from: 0,
      count: Math.floor(PLANS * 0.3),
      everyMoved: 1,
    }),
  ];
  const [plans, close] = (["plans", "close"] as const).map((what) =>
    tried.reduce((all, some) => all + some[what], 0),
  );
  expect(tried.flatMap(({ faults, jumps }) => [...faults, ...jumps])).toEqual([]);
  expect((close ?? 0) / (plans ?? 1)).toBeLessThan(0.15);
});
