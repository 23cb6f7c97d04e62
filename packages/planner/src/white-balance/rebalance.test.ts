// Guards where the search for depths starts, ends and steps, on shifts that are plain functions of depth.
import { describe, expect, it } from "vitest";
import { balanceDepths } from "./rebalance.js";

/** A shift that grows by so much for each metre. */
const per_m = (rate: number) => (balanced_m: number, seen_m: number) => rate * Math.abs(seen_m - balanced_m);

describe("depths to balance at", () => {
  it("are one where nothing shifts, or where the range is a single depth", () => {
    expect(balanceDepths(5, 18, 1, () => 0)).toEqual([5]);
    expect(balanceDepths(5, 5, 1, () => 100)).toEqual([5]);
  });

  it("follow each other where the shift since the last one is beyond the tolerance, to a tenth of a metre", () => {
    // Beyond 8 at 2 a metre: after more than 4 m, the next tenth.
    expect(balanceDepths(2, 15, 8, per_m(2))).toEqual([2, 6.1, 10.2, 14.3]);
    expect(balanceDepths(15, 2, 8, per_m(2))).toEqual([15, 10.9, 6.8, 2.7]);
  });

  it("are at least half a metre apart", () => {
    expect(balanceDepths(5, 7, 1, () => 100)).toEqual([5, 5.5, 6, 6.5, 7]);
    expect(balanceDepths(7, 5, 1, () => 100)).toEqual([7, 6.5, 6, 5.5, 5]);
  });

  it("leave out an end that is nearer than that, and take one that just needs its own", () => {
    expect(balanceDepths(5, 5.4, 1, () => 100)).toEqual([5]);
    expect(balanceDepths(5, 5.5, 1, () => 100)).toEqual([5, 5.5]);
    expect(balanceDepths(2, 6.1, 8, per_m(2))).toEqual([2, 6.1]);
    expect(balanceDepths(2, 6, 8, per_m(2))).toEqual([2]);
  });

  it("are found where the shift has its only peak, even if it falls again behind it", () => {
    const peak = (balanced_m: number, seen_m: number) => (balanced_m === 2 && seen_m === 4.3 ? 9 : 0);
    expect(balanceDepths(2, 20, 8, peak)).toEqual([2, 4.3]);
  });
});
