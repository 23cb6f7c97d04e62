// Guards where the search for depths starts, ends and steps, on shifts that are plain functions of depth.
import { describe, expect, it } from "vitest";
import { balancesAlong } from "./rebalance.js";

/** A shift that grows by so much for each metre. */
const per_m = (rate: number) => (balanced_m: number, seen_m: number) => rate * Math.abs(seen_m - balanced_m);
const way = (from_m: number, to_m: number) => ({ balanced_m: from_m, from_m, to_m });

describe("depths to balance at again", () => {
  it("are none where nothing shifts, or where the range is a single depth", () => {
    expect(balancesAlong(way(5, 18), 1, () => 0)).toEqual({ depths_m: [], reached: 1 });
    expect(balancesAlong(way(5, 5), 1, per_m(100))).toEqual({ depths_m: [], reached: 1 });
  });

  it("follow each other just before the shift since the last one is beyond the tolerance", () => {
    expect(balancesAlong(way(2, 15), 8, per_m(2))).toEqual({ depths_m: [6, 10, 14], reached: 8 });
    expect(balancesAlong(way(15, 2), 8, per_m(2))).toEqual({ depths_m: [11, 7, 3], reached: 8 });
  });

  it("are two metres apart at least, and tell how far the shift then goes", () => {
    expect(balancesAlong(way(5, 10), 1, per_m(3))).toEqual({ depths_m: [7, 9], reached: 6 });
    expect(balancesAlong(way(4, 1), 1, per_m(3))).toEqual({ depths_m: [2], reached: 6 });
    expect(balancesAlong(way(5, 6.5), 1, per_m(3)).depths_m).toEqual([]);
  });

  it("keep away from an end that has a balance of its own", () => {
    expect(balancesAlong({ ...way(2, 7), closed: true }, 8, per_m(2)).depths_m).toEqual([]);
    expect(balancesAlong({ ...way(2, 9), closed: true }, 8, per_m(2)).depths_m).toEqual([6]);
  });

  it("begin from a balance that was made elsewhere", () => {
    expect(balancesAlong({ balanced_m: 10, from_m: 18, to_m: 5 }, 8, per_m(1.9))).toMatchObject({
      depths_m: [18, 14, 10, 6],
    });
    expect(balancesAlong({ balanced_m: 10, from_m: 14, to_m: 5 }, 8, per_m(2)).depths_m).toEqual([6]);
  });

  it("are no more than there is time for, with the tolerance raised, and none too shallow to hover at", () => {
    const asked = balancesAlong(way(2, 30), 4, per_m(2));
    expect(asked.depths_m.length).toBeGreaterThan(3);
    const fewer = balancesAlong(way(2, 30), 4, per_m(2), { most: 3 });
    expect(fewer.depths_m.length).toBeGreaterThan(0);
    expect(fewer.depths_m.length).toBeLessThanOrEqual(3);
    expect(fewer.reached).toBeGreaterThan(asked.reached);
    expect(balancesAlong(way(6, 0.5), 4, per_m(2)).depths_m.at(-1)).toBeLessThan(3);
    expect(balancesAlong(way(6, 0.5), 4, per_m(2), { from_m: 3 }).depths_m).toEqual([4]);
  });

  it("are one more on a last stretch that is long, where it takes out what is seen, and where there is time for it", () => {
    const longest = { stretch_m: 6, seen: 5 };
    const along = (rate: number, hands: object) => balancesAlong(way(8, 20), 8, per_m(rate), hands).depths_m;
    expect(along(0.6, { most: 3 })).toEqual([]);
    // Halfway of what is left, as near as a hand hits it.
    expect(along(0.6, { most: 3, longest })).toEqual([14]);
    expect(along(0.4, { most: 3, longest })).toEqual([]);
    expect(along(0.6, { most: 0, longest })).toEqual([]);
    const spread = balancesAlong(way(8, 30), 8, (from, to) => (from < 12 ? 5 : 0.7) * (to - from), {
      most: 2,
      longest,
    });
    expect(spread.depths_m).toHaveLength(2);
    expect(spread.depths_m[1]).toBeGreaterThan(12);
    expect(balancesAlong(way(8, 13), 8, per_m(1.5), { most: 3, longest }).depths_m).toEqual([]);
    expect(balancesAlong({ ...way(8, 20), closed: true }, 8, per_m(0.6), { longest }).depths_m).toEqual([]);
  });
});
