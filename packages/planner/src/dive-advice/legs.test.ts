import { describe, expect, it } from "vitest";
import { exposuresOf } from "../exposure-loss/exposures.js";
import type { FilterChoiceFigures } from "../result/filter-choice.js";
import type { Scene } from "../scene/scene.js";
import { decideBalance } from "../white-balance/decide.js";
import { decided, FLIPPED } from "./decided.test-support.js";
import { balancesDown, balancesUp, endOf, holdsBelow, type Leg, legsOf, mountOf, startOf } from "./legs.js";

const RED: Scene = { ...FLIPPED, filter_kind: "red", filter_density: 0.6 };

/** Legs of a filter that serves from one depth to another. */
function legsFor(from_m: number, to_m: number, change: number[] | undefined, kind: "red" | "none" = "red") {
  const { change_depths_m: _, ...choice } = decided(FLIPPED).filter;
  const filter: FilterChoiceFigures = {
    ...choice,
    filter_kind: kind,
    serves_min_depth_m: from_m,
    serves_max_depth_m: to_m,
    ...(change ? { change_depths_m: change } : {}),
  };
  return legsOf(FLIPPED, RED, filter);
}
/** With a tolerance that a balance keeps all the way. */
const still = { min_depth_m: 1, max_depth_m: 4, balance_tolerance_delta_e00: 30 };
const noFilter = (): FilterChoiceFigures => {
  const { change_depths_m: _, ...choice } = decided(FLIPPED).filter;
  return { ...choice, filter_kind: "none" };
};
const ends = (legs: readonly Leg[]) =>
  legs.map(({ scene, filtered }) => [scene.min_depth_m, scene.max_depth_m, filtered]);

describe("the legs of a dive", () => {
  it("are one where the filter is not changed, with it or without", () => {
    expect(ends(legsFor(3, 15, undefined))).toEqual([[1, 15, true]]);
    expect(ends(legsFor(1, 15, undefined, "none"))).toEqual([[1, 15, false]]);
  });

  it("are with the filter where it serves, and without it above and below, from depths that a diver can hit", () => {
    expect(ends(legsFor(3.2, 15, [3.2]))).toEqual([
      [1, 3, false],
      [3, 15, true],
    ]);
    expect(ends(legsFor(3, 9.4, [3, 9.4]))).toEqual([
      [1, 3, false],
      [3, 9, true],
      [9, 15, false],
    ]);
  });

  it("are no shorter than two balances take: a shorter one is left to its neighbour", () => {
    expect(ends(legsFor(2.4, 15, [2.4]))).toEqual([[1, 15, true]]);
    expect(ends(legsFor(1, 13.6, [13.6]))).toEqual([[1, 15, true]]);
  });

  it("are exposed and balanced each by itself, through the filter where it is on", () => {
    for (const leg of legsFor(3, 15, [3])) {
      expect(leg.scene.filter_kind).toBe(leg.filtered ? "red" : undefined);
      expect(leg.exposure).toEqual(exposuresOf(leg.scene));
      expect(leg.balance).toEqual(decideBalance(leg.scene));
    }
  });

  it("begin at the shallow end of the first and end at the deep end of the last", () => {
    const legs = legsFor(3, 9, [3, 9]);
    expect(startOf(legs).depth_m).toBe(1);
    expect(endOf(legs).depth_m).toBe(15);
  });

  it("balance where each begins going down, and where the filter is changed coming up", () => {
    const legs = legsFor(3, 15, [3]);
    const [down, up] = [balancesDown(legs), balancesUp(legs)];
    expect(down[0]).toBe(1);
    expect(down).toContain(3);
    expect(up).toContain(3);
    // Where filming turns, the last balance going down still serves.
    expect(up[0]).toBeLessThan(15);
    for (const depths of [down, up]) {
      for (let i = 1; i < depths.length; i++) {
        expect(Math.abs(depths[i] - depths[i - 1])).toBeGreaterThanOrEqual(2);
      }
    }
  });

  it("begin to balance where a hand holds still, if that serves above, and say how far down the last one serves", () => {
    const calm = legsOf({ ...FLIPPED, ...still }, { ...FLIPPED, ...still }, noFilter())[0];
    expect([calm.top_m, calm.first_m]).toEqual([1, 2]);
    expect(holdsBelow(calm)).toEqual({ holds: { to_m: 4, because: "at_limit" } });
    const strict = { ...FLIPPED, ...still, balance_tolerance_delta_e00: 0.1 };
    expect(legsOf(strict, strict, noFilter())[0].first_m).toBe(1);
    const auto = { ...FLIPPED, ...still, white_balance_mode: "auto" as const };
    expect(holdsBelow(legsOf(auto, auto, noFilter())[0])).toEqual({});
  });

  it("change the filter as the mount does", () => {
    const [leg] = legsFor(1, 15, undefined);
    expect(mountOf(leg)).toBe("flip");
    expect(mountOf({ ...leg, scene: { ...leg.scene, filter_change_underwater: "clip_on" } })).toBe("clip_on");
  });
});
