// What holds of every plan, on seeded dives: it can be followed, and a hair more or less of anything does not turn it unsaid.
import { describe, expect, it } from "vitest";
import { seededLight } from "../golden/seed-light.js";
import { tryDives } from "./properties.js";
import { seededDive } from "./seed-dive.js";

describe("plans for seeded dives", { timeout: 120_000 }, () => {
  const tried = [
    tryDives(seededDive, { from: 0, count: 140, everyMoved: 4 }),
    tryDives((index) => seededLight(3000 + index), { from: 0, count: 60, everyMoved: 4 }),
  ];

  it("can be followed from the first step to the last", () => {
    expect(tried.flatMap(({ faults }) => faults)).toEqual([]);
  });

  it("do not turn for two hundredths of anything, unless they say that it is close", () => {
    expect(tried.flatMap(({ jumps }) => jumps)).toEqual([]);
  });

  it("are close calls in at most 15 of 100", () => {
    const sum = (pick: "plans" | "close") => tried.reduce((all, some) => all + some[pick], 0);
    expect(sum("plans")).toBeGreaterThan(170);
    expect(sum("close") / sum("plans")).toBeLessThan(0.15);
  });
});
