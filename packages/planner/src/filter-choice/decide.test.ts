import { describe, expect, it } from "vitest";
import { costOf, decide } from "./decide.js";

describe("the decision", () => {
  const none = { candidate: { kind: "none" as const, density: 0 }, delta_e00: 3 };
  const red = (delta_e00: number, density = 0.3) => ({
    candidate: { kind: "red" as const, density },
    delta_e00,
  });
  const magenta = (delta_e00: number) => ({
    candidate: { kind: "magenta" as const, density: 0.3 },
    delta_e00,
  });

  it("asks of a filter that it earns what mounting costs", () => {
    expect(decide([none, red(2.49), magenta(4)], 0.5).advised).toEqual(red(2.49));
    expect(decide([none, red(2.51), magenta(4)], 0.5).advised).toEqual(none);
    expect(costOf({ kind: "magenta" }, 2, 0.5) - costOf({ kind: "none" }, 2, 0.5)).toBe(0.5);
  });

  it("takes the first of equals and names the best of another kind as runner-up", () => {
    const { advised, runnerUp, bestFilter } = decide([none, red(2, 0.3), red(2, 0.6), magenta(2.4)], 0.5);
    expect(advised).toEqual(red(2, 0.3));
    expect(runnerUp).toEqual(magenta(2.4));
    expect(bestFilter).toEqual(red(2, 0.3));
  });

  it("mounts nothing where a filter earns just what mounting costs", () => {
    const { advised, runnerUp, bestFilter } = decide([none, red(2.5)], 0.5);
    expect(advised).toEqual(none);
    expect(runnerUp).toEqual(red(2.5));
    expect(bestFilter).toEqual(red(2.5));
  });

  it("has no runner-up but itself, and no best filter, where nothing else is there to choose", () => {
    expect(decide([none], 0.5)).toEqual({ advised: none, runnerUp: none, bestFilter: undefined });
  });

  it("advises the weakest of densities that nobody can tell from the best, and names the band", () => {
    const { advised, asGood } = decide(
      [none, red(2.05, 0.6), red(2, 0.9), red(2.09, 0.45), red(2.2, 1.2), red(2.3, 0.3)],
      0.5,
    );
    expect(advised).toEqual(red(2.09, 0.45));
    expect(asGood).toEqual({ from: 0.45, to: 0.9 });
  });

  it("advises none of them that another kind, or no filter, would beat", () => {
    const { advised, asGood } = decide([none, red(2.45, 0.6), red(2.52, 0.45)], 0.5);
    expect(advised).toEqual(red(2.45, 0.6));
    expect(asGood).toEqual({ from: 0.6, to: 0.6 });
    expect(decide([none, red(2, 0.6), red(2.08, 0.45), magenta(2.05)], 0.5).advised).toEqual(red(2, 0.6));
  });

  it("has no band for no filter, nor for a measured one", () => {
    expect(decide([none, red(2.6)], 0.5).asGood).toBeUndefined();
    const measured = { candidate: { kind: "red" as const, id: "a" }, delta_e00: 1 };
    expect(decide([none, measured], 0.5)).toMatchObject({ advised: measured, asGood: undefined });
  });
});
