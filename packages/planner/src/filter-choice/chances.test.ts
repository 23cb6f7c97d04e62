import { describe, expect, it } from "vitest";
import { normalFrom } from "../../../optics/src/random.test-support.js";
import { normalCdf } from "../uncertainty/normal.js";
import { chancesOfLeast } from "./chances.js";

const shifts = (...rows: number[][]): Float64Array[] => rows.map((row) => Float64Array.from(row));
const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

describe("the chance of each figure to be the least", () => {
  it.each([0, 0.3, 1, 2.2])(
    "is that of a normal difference below zero for two of them (apart by %d standard deviations)",
    (apart) => {
      // Shifts 0.5 and 0.1 apart in common causes, 1.2 in one of the second's own: a spread of the difference by Pythagoras.
      const sd = Math.hypot(0.5, 0.1, 1.2);
      const [, second] = chancesOfLeast([5, 5 + apart * sd], shifts([0.9, 0.4, 0], [0.4, 0.3, 1.2]));
      expect(Math.abs((second ?? Number.NaN) - normalCdf(-apart))).toBeLessThan(0.01);
    },
  );

  it("is a third each for three alike, and an eighth for one of eight that move on their own", () => {
    const alone = (count: number) =>
      shifts(
        ...Array.from({ length: count }, (_, k) =>
          Array.from({ length: count }, (_, c) => (c === k ? 1 : 0)),
        ),
      );
    for (const count of [3, 8]) {
      const chances = chancesOfLeast(Array(count).fill(4), alone(count));
      expect(sum(chances)).toBeCloseTo(1, 12);
      for (const chance of chances) expect(Math.abs(chance - 1 / count)).toBeLessThan(0.015);
    }
  });

  it("is as a seeded simulation counts it, for five that move together in part, of 15 causes", () => {
    const random = normalFrom(20261129);
    const likely = [5, 5.2, 5.1, 5.6, 9];
    const moved = likely.map(() => Float64Array.from({ length: 15 }, () => 0.3 * random()));
    const won = likely.map(() => 0);
    const draws = 60000;
    for (let n = 0; n < draws; n++) {
      const z = Array.from({ length: 15 }, () => random());
      const values = likely.map((value, k) => value + sum(z.map((one, c) => one * (moved[k]?.[c] ?? 0))));
      const least = values.indexOf(Math.min(...values));
      won[least] = (won[least] ?? 0) + 1;
    }
    chancesOfLeast(likely, moved).forEach((chance, k) => {
      expect(Math.abs(chance - (won[k] ?? 0) / draws)).toBeLessThan(0.012);
    });
  });

  it("is all the first's among equals, and where nothing moves all that of the least", () => {
    expect(chancesOfLeast([2, 2], shifts([1, 0.5], [1, 0.5]))).toEqual([1, 0]);
    expect(chancesOfLeast([3, 2, 4], shifts([], [], []))).toEqual([0, 1, 0]);
    expect(chancesOfLeast([3], shifts([0.5]))).toEqual([1]);
  });
});
