import { describe, expect, it } from "vitest";
import { exposureLoss } from "../exposure-loss/exposure-loss.js";
import type { FilterChoiceAnswer } from "../result/filter-choice.js";
import type { Scene } from "../scene/scene.js";
import { decideBalance } from "../white-balance/decide.js";
import { decided, exposed, FLIPPED } from "./decided.test-support.js";
import {
  balancesDown,
  balancesUp,
  balancesUpIn,
  changeStops,
  endOf,
  type Leg,
  legsOf,
  mountOf,
  startOf,
} from "./legs.js";

const RED: Scene = { ...FLIPPED, filter_kind: "red", filter_density: 0.6 };

/** Legs of a filter that serves from one depth to another. */
function legsFor(from_m: number, to_m: number, change: number[] | undefined, kind: "red" | "none" = "red") {
  const { change_depths_m: _, ...choice } = decided(FLIPPED).filter;
  const filter: FilterChoiceAnswer = {
    ...choice,
    filter_kind: kind,
    serves_min_depth_m: from_m,
    serves_max_depth_m: to_m,
    ...(change ? { change_depths_m: change } : {}),
  };
  return legsOf(FLIPPED, RED, filter);
}
const ends = (legs: readonly Leg[]) =>
  legs.map(({ scene, filtered }) => [scene.min_depth_m, scene.max_depth_m, filtered]);
/** A leg with other depths at which to balance. */
const balanced = (leg: Leg, down: number[], up: number[]): Leg => ({
  ...leg,
  balance: { ...leg.balance, balance_depths_descending_m: down, balance_depths_ascending_m: up },
});

describe("the legs of a dive", () => {
  it("are one where the filter is not changed, with it or without", () => {
    expect(ends(legsFor(3, 15, undefined))).toEqual([[1, 15, true]]);
    expect(ends(legsFor(1, 15, undefined, "none"))).toEqual([[1, 15, false]]);
    const { serves_min_depth_m: _, serves_max_depth_m: __, ...nowhere } = decided(FLIPPED).filter;
    expect(ends(legsOf(FLIPPED, RED, nowhere))).toEqual([[1, 15, true]]);
  });

  it("are with the filter where it serves, and without it above and below", () => {
    expect(ends(legsFor(3, 15, [3]))).toEqual([
      [1, 3, false],
      [3, 15, true],
    ]);
    expect(ends(legsFor(1, 9, [9]))).toEqual([
      [1, 9, true],
      [9, 15, false],
    ]);
    expect(ends(legsFor(3, 9, [3, 9]))).toEqual([
      [1, 3, false],
      [3, 9, true],
      [9, 15, false],
    ]);
  });

  it("are exposed and balanced each by itself, through the filter where it is on", () => {
    for (const leg of legsFor(3, 15, [3])) {
      expect(leg.scene.filter_kind).toBe(leg.filtered ? "red" : undefined);
      expect(leg.exposure).toEqual(exposureLoss(leg.scene));
      expect(leg.balance).toEqual(decideBalance(leg.scene));
    }
  });

  it("begin at the shallow end of the first and end at the deep end of the last", () => {
    const legs = legsFor(3, 9, [3, 9]);
    expect(startOf(legs)).toBe(legs[0].exposure.depths[0]);
    expect(startOf(legs).depth_m).toBe(1);
    expect(endOf(legs)).toBe(legs[2].exposure.depths.at(-1));
    expect(endOf(legs).depth_m).toBe(15);
  });
});

describe("balances over the legs", () => {
  it("go down leg by leg, and come up from the last", () => {
    const [bare, filtered] = legsFor(3, 15, [3]);
    const legs = [balanced(bare, [1, 2], [3, 1.2]), balanced(filtered, [3, 8], [15, 7])];
    expect(balancesDown(legs)).toEqual([1, 2, 3, 8]);
    expect(balancesUp(legs)).toEqual([15, 7, 3, 1.2]);
    // The legs stay in their order.
    expect(balancesDown(legs)).toEqual([1, 2, 3, 8]);
  });

  it("leave those out on the way up that come less than half a metre below a change", () => {
    const [bare, filtered] = legsFor(3, 15, [3]);
    const up = balanced(filtered, [3], [15, 6, 3.5, 3.4]);
    expect(balancesUpIn(up, bare)).toEqual([15, 6, 3.5]);
    // Above the shallowest leg nothing is changed.
    expect(balancesUpIn(balanced(bare, [1], [3, 1.2]), balanced(bare, [1], [3, 1.2]))).toEqual([3, 1.2]);
    expect(balancesUpIn(up, undefined)).toEqual([15, 6, 3.5]);
  });
});

describe("a change of filter", () => {
  it("is worth what the filter takes where the legs meet, in exposure, in or out", () => {
    const [bare, filtered] = legsFor(3, 15, [3]);
    const takes = exposureLoss({ ...RED, min_depth_m: 3, max_depth_m: 3 }).depths[0].lens_filter_loss_stops;
    expect(takes.likely).toBeGreaterThan(0.5);
    expect(changeStops(bare, filtered)).toBeCloseTo(takes.likely, 9);
    const [on, off] = legsFor(1, 3, [3]);
    expect(changeStops(on, off)).toBeCloseTo(takes.likely, 9);
    // The depth where they meet counts, and no other.
    const elsewhere = { exposure_value_ev100: { low: 0, likely: 0, high: 0 } };
    expect(
      changeStops(exposed(bare, "shallow", elsewhere), exposed(filtered, "deep", elsewhere)),
    ).toBeCloseTo(takes.likely, 9);
  });

  it("is made as the mount is", () => {
    const [leg] = legsFor(1, 15, undefined);
    expect(mountOf(leg)).toBe("flip");
    expect(mountOf({ ...leg, scene: { ...leg.scene, filter_change_underwater: "clip_on" } })).toBe("clip_on");
  });
});
