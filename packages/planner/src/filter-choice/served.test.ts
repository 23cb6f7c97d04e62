import { describe, expect, it } from "vitest";
import { type NonEmpty, nonEmpty } from "../lists/non-empty.js";
import { servedBy } from "./served.js";

const DEPTHS = [4, 6, 10, 16];
const served = (of: NonEmpty<number>, than: NonEmpty<number>) =>
  servedBy(nonEmpty(DEPTHS.slice(0, of.length), "depths"), of, than);

// By what the words mean; between two depths both errors are taken as straight lines, so that they cross where those do.
describe("the part of a range that a candidate serves", () => {
  it("is the whole range where it leads everywhere, and nothing where it leads nowhere or is merely even", () => {
    expect(served([1, 1, 1, 1], [2, 2, 2, 2])).toEqual({ from_m: 4, to_m: 16 });
    expect(served([2, 2, 2, 2], [1, 1, 1, 1])).toBeUndefined();
    expect(served([2, 2, 2, 2], [2, 2, 2, 2])).toBeUndefined();
  });

  it("begins where it overtakes: behind by 1 at 4 m and ahead by 1 at 6 m are even at 5 m", () => {
    expect(served([3, 1, 1, 1], [2, 2, 2, 2])).toEqual({ from_m: 5, to_m: 16 });
    // Behind by 1, ahead by 3: a quarter of the way.
    expect(served([4, 1, 1, 1], [3, 4, 4, 4])).toEqual({ from_m: 4.5, to_m: 16 });
  });

  it("ends where it falls behind: ahead by 1 at 10 m and behind by 2 at 16 m are even at 12 m", () => {
    expect(served([1, 1, 1, 4], [2, 2, 2, 2])).toEqual({ from_m: 4, to_m: 12 });
  });

  it("has both ends inside a range of which it leads only the middle", () => {
    expect(served([3, 1, 2.5, 4], [2, 2, 2, 2])?.from_m).toBeCloseTo(5, 12);
    // Ahead by 1 at 6 m, behind by 0.5 at 10 m: two thirds of the way.
    expect(served([3, 1, 2.5, 4], [2, 2, 2, 2])?.to_m).toBeCloseTo(6 + (2 / 3) * 4, 12);
  });

  it("reaches from its first to its last lead, across a gap", () => {
    expect(served([1, 3, 1, 1], [2, 2, 2, 2])).toEqual({ from_m: 4, to_m: 16 });
  });

  it("is that depth where there is one alone", () => {
    expect(served([1], [2])).toEqual({ from_m: 4, to_m: 4 });
    expect(served([2], [1])).toBeUndefined();
  });
});
