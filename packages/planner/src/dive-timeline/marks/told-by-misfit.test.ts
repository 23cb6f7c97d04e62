import { describe, expect, it } from "vitest";
import { toldBy } from "./told-by-misfit.js";

const even = (count: number) => new Array<number>(count).fill(1);

describe("what misfit tells of causes", () => {
  it("is nothing of a cause that moves no misfit", () => {
    expect(toldBy([3, -2, 1], [[0, 0, 0]], even(3), [0])).toEqual({ likely: [0], moves: [[1]] });
  });

  // A normal mean with a normal prior: precisions add, and the mean lies between by them (Gelman et al. 2013, Bayesian Data Analysis, 2.5).
  it("is a mean between the prior and the readings, as sure as both together", () => {
    const { likely, moves } = toldBy([2, 2, 2, 2], [[1, 1, 1, 1]], even(4), [0]);
    expect(likely[0]).toBeCloseTo((4 * 2) / (1 + 4), 12);
    expect(moves[0]?.[0]).toBeCloseTo(Math.sqrt(1 / (1 + 4)), 12);
  });

  it("does not depend on where the fit began", () => {
    const unexplained = [
      [0.8, -0.3, 0.1, 1.2],
      [0.2, 0.9, -0.7, 0.4],
    ];
    const misfit = [1.1, 0.4, -0.9, 2.3];
    const weights = [1, 0.6, 1, 0.8];
    const { likely } = toldBy(misfit, unexplained, weights, [0, 0]);
    // With the causes elsewhere, the misfit is what is left of it.
    const left = misfit.map(
      (value, i) => value - 0.5 * (unexplained[0]?.[i] ?? 0) + 1.5 * (unexplained[1]?.[i] ?? 0),
    );
    const again = toldBy(left, unexplained, weights, [0.5, -1.5]).likely;
    likely.forEach((value, j) => {
      expect(again[j]).toBeCloseTo(value, 12);
    });
  });

  it("ties causes that move the same readings: their sum is sure, their difference is not", () => {
    const both = [2, 2, 2];
    const { likely, moves } = toldBy([3, 3, 3], [both, both], even(3), [0, 0]);
    expect(likely[0]).toBeCloseTo(likely[1] ?? 0, 12);
    const varianceOf = (one: number, other: number): number =>
      moves.reduce((sum, [a = 0, b = 0]) => sum + (one * a + other * b) ** 2, 0);
    // Precision of the sum: 1/2 beforehand, and 12 by the readings; of the difference 1/2 alone.
    expect(varianceOf(1, 1)).toBeCloseTo(1 / (1 / 2 + 12), 12);
    expect(varianceOf(1, -1)).toBeCloseTo(2, 12);
  });
});
