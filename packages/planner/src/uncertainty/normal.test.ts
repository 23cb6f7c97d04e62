import { expect, it } from "vitest";
import { normalCdf, Z90 } from "./normal.js";

// Abramowitz & Stegun 1964, Table 26.1.
it.each([
  [0, 0.5],
  [0.5, 0.6914624612740131],
  [1, 0.8413447460685429],
  [1.5, 0.9331927987311419],
  [2, 0.9772498680518208],
  [2.5, 0.9937903346742238],
  [3, 0.9986501019683699],
  [4, 0.9999683287581669],
])("P(%d) = %d within 7.5e-8, and P(-x) = 1 - P(x) (Abramowitz & Stegun 1964, Table 26.1)", (x, p) => {
  expect(Math.abs(normalCdf(x) - p)).toBeLessThan(7.5e-8);
  expect(Math.abs(normalCdf(-x) - (1 - p))).toBeLessThan(7.5e-8);
});

it("has its 90th percentile at 1.28155 (Abramowitz & Stegun 1964, Table 26.5: 1.28155)", () => {
  expect(Z90).toBeCloseTo(1.28155, 5);
  expect(Math.abs(normalCdf(Z90) - 0.9)).toBeLessThan(7.5e-8);
});

it("never leaves 0 to 1 and never falls", () => {
  let last = 0;
  for (let z = -40; z <= 40; z += 0.25) {
    const p = normalCdf(z);
    expect(p).toBeGreaterThanOrEqual(last - 1e-7);
    expect(p).toBeLessThanOrEqual(1);
    last = p;
  }
});
