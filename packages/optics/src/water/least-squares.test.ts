import { describe, expect, it } from "vitest";
import { fitRobustly, HUBER_VARIANCE, jacobian } from "./least-squares.js";

const free = (size: number) => ({
  least: Array.from({ length: size }, () => -1e6),
  most: Array.from({ length: size }, () => 1e6),
});
/** Huber 1964, for 95 % efficiency on normal noise. */
const K = 1.345;

describe("a robust fit", () => {
  // y = 1 + 2 x with errors of 0.3, -0.3, -0.3, 0.3: normal equations by hand. Sums over x of 0, 1, 2, 3: 4, 6, 14.
  it("is ordinary least squares where no residual is large, with the covariance of the textbooks: inverse of the normal matrix", () => {
    const x = [0, 1, 2, 3];
    const y = [1.3, 2.7, 4.7, 7.3];
    const { parameters, unscaledCovariance, weights, residuals, loss } = fitRobustly({
      start: [0, 0],
      residuals: ([a, b]) => x.map((at, i) => a + b * at - y[i]),
      ...free(2),
    });
    expect(parameters[0]).toBeCloseTo(1, 6);
    expect(parameters[1]).toBeCloseTo(2, 6);
    // (4 * 14 - 6 * 6) = 20
    [
      [14 / 20, -6 / 20],
      [-6 / 20, 4 / 20],
    ].forEach((row, j) => {
      row.forEach((value, k) => {
        expect(unscaledCovariance[j][k]).toBeCloseTo(value, 8);
      });
    });
    expect(weights).toEqual([1, 1, 1, 1]);
    [-0.3, 0.3, 0.3, -0.3].forEach((residual, i) => {
      expect(residuals[i]).toBeCloseTo(residual, 6);
    });
    expect(loss).toBeCloseTo(4 * 0.09, 8);
  });

  // Four readings of 0 and one of 10: 4 m = 1.345 balances what is held of the far one (Huber 1964).
  it("holds a far reading to 1.345 standard deviations", () => {
    const { parameters, weights, loss, unscaledCovariance } = fitRobustly({
      start: [5],
      residuals: ([m]) => [0, 0, 0, 0, 10].map((reading) => m - reading),
      ...free(1),
    });
    const m = K / 4;
    expect(parameters[0]).toBeCloseTo(m, 4);
    expect(weights.slice(0, 4)).toEqual([1, 1, 1, 1]);
    expect(weights[4]).toBeCloseTo(K / (10 - m), 4);
    expect(loss).toBeCloseTo(4 * m * m + 2 * K * (10 - m) - K * K, 6);
    expect(unscaledCovariance[0][0]).toBeCloseTo(1 / (4 + K / (10 - m)), 4);
  });

  it("finds an exponential decay again from afar", () => {
    const x = [0, 1, 2, 4, 7];
    const { parameters, loss } = fitRobustly({
      start: [1, 1],
      residuals: ([amplitude, rate]) =>
        x.map((at) => (amplitude * Math.exp(-rate * at) - 5 * Math.exp(-0.3 * at)) / 0.01),
      least: [0.01, 0.001],
      most: [100, 10],
    });
    expect(parameters[0]).toBeCloseTo(5, 6);
    expect(parameters[1]).toBeCloseTo(0.3, 6);
    expect(loss).toBeLessThan(1e-9);
  });

  // From 3 on, whole steps of Newton's rule on the arc tangent run away (its basin ends at 1.39: textbooks).
  it("halves a step that would make it worse", () => {
    const { parameters } = fitRobustly({
      start: [3],
      residuals: ([x]) => [Math.atan(x)],
      ...free(1),
    });
    expect(parameters[0]).toBeCloseTo(0, 5);
  });

  it("stays within its bounds, on the nearest one where the best lies beyond", () => {
    const beyond = (least: number, most: number) =>
      fitRobustly({ start: [0.5], residuals: ([x]) => [x - 3, (x - 3) / 2], least: [least], most: [most] })
        .parameters[0];
    expect(beyond(0, 1)).toBe(1);
    expect(beyond(0.2, 10)).toBeCloseTo(3, 8);
    expect(
      fitRobustly({ start: [0.5], residuals: ([x]) => [x + 3], least: [0.25], most: [1] }).parameters[0],
    ).toBe(0.25);
  });

  it("stays where it starts, where that is best", () => {
    const { parameters, loss } = fitRobustly({ start: [2], residuals: ([x]) => [x - 2, 2 - x], ...free(1) });
    expect(parameters).toEqual([2]);
    expect(loss).toBe(0);
  });
});

describe("slopes by differences", () => {
  it("are exact for a parabola, to rounding, and one-sided at a bound", () => {
    const values = ([x, y]: readonly number[]) => [x * x, x * y, 3 * y];
    const slopes = jacobian(values, [2, 5], { least: [-10, -10], most: [10, 10] });
    [
      [4, 0],
      [5, 2],
      [0, 3],
    ].forEach((row, i) => {
      row.forEach((slope, j) => {
        expect(slopes[i][j]).toBeCloseTo(slope, 8);
      });
    });
    const tried: number[] = [];
    const edge = jacobian(
      ([x]) => {
        tried.push(x);
        return [7 * x];
      },
      [1],
      { least: [0], most: [1] },
    );
    expect(edge[0][0]).toBeCloseTo(7, 8);
    expect(Math.max(...tried)).toBe(1);
    const bottom: number[] = [];
    jacobian(
      ([x]) => {
        bottom.push(x);
        return [7 * x];
      },
      [0],
      { least: [0], most: [1] },
    );
    expect(Math.min(...bottom)).toBe(0);
  });

  it("take steps in proportion to a large parameter", () => {
    const [[slope]] = jacobian(([x]) => [x ** 3], [1e4], free(1));
    expect(slope / 3e8).toBeCloseTo(1, 6);
  });
});

it("the variance of what Huber leaves of unit normal noise is 0.7102: the integral of min(|r|, 1.345)^2 over it", () => {
  const step = 1e-3;
  let sum = 0;
  for (let r = -8; r < 8; r += step) {
    const at = r + step / 2;
    sum += (Math.min(Math.abs(at), K) ** 2 * Math.exp((-at * at) / 2) * step) / Math.sqrt(2 * Math.PI);
  }
  expect(HUBER_VARIANCE).toBeCloseTo(sum, 4);
});
