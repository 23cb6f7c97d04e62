import { describe, expect, it } from "vitest";
import { depthPlan, everyDepth } from "./depth-plan.js";

describe("which depths are integrated", () => {
  it.each([1, 2, 7, 23, 24, 30, 100, 301])("of %d, each is integrated or follows, once", (count) => {
    const { integrated, others } = depthPlan(count);
    const all = [...integrated, ...others].sort((a, b) => a - b);
    expect(all).toEqual(Array.from({ length: count }, (_, n) => n));
    expect([...integrated].sort((a, b) => a - b)).toEqual(integrated);
  });

  it("integrates all of a few, and no more than 19 of however many", () => {
    expect(depthPlan(23)).toEqual(everyDepth(23));
    for (const count of [24, 30, 1000]) expect(depthPlan(count).integrated).toHaveLength(19);
  });

  it("always integrates both ends", () => {
    for (const count of [24, 30, 300]) {
      const { integrated } = depthPlan(count);
      expect(integrated[0]).toBe(0);
      expect(integrated[integrated.length - 1]).toBe(count - 1);
    }
  });

  it("gives every other depth, and the one that checks, by the polynomial through the nodes (Lagrange)", () => {
    const count = 60;
    const { integrated, others, weights, check } = depthPlan(count);
    const u = (n: number) => Math.log(1 + (10 * n) / count);
    const cubic = (n: number) => 1 - 2 * u(n) + 0.5 * u(n) ** 2 - 0.125 * u(n) ** 3;
    const rowAt = (row: Float64Array) => integrated.reduce((sum, n, k) => sum + row[k] * cubic(n), 0);
    others.forEach((n, m) => {
      const row = weights.subarray(m * integrated.length, (m + 1) * integrated.length);
      expect(rowAt(row)).toBeCloseTo(cubic(n), 11);
    });
    if (check === undefined) throw new Error("nothing checks");
    expect(rowAt(check.weights)).toBeCloseTo(cubic(integrated[check.at]), 11);
    expect(check.weights[check.at]).toBe(0);
  });
});
