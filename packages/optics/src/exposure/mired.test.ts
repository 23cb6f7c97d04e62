import { expect, it } from "vitest";
import { mired, miredShift, shiftedCct_K } from "./mired.js";

it("5500 K is 181.8 mired, 3200 K 312.5 (the reciprocal megakelvin by definition: 10^6 / K)", () => {
  expect(mired(5500)).toBeCloseTo(181.8, 1);
  expect(mired(3200)).toBe(312.5);
});

it("3200 to 5500 K is a shift of -131, as full blue conversion filters are sold (common practice, no published source: -131 mired)", () => {
  expect(miredShift(3200, 5500)).toBeCloseTo(-130.7, 1);
  expect(miredShift(5500, 3200)).toBeCloseTo(130.7, 1);
});

it("the same shift moves blue light by more kelvin than warm light", () => {
  // Worked from the definition: 10^6 / (10^6 / 5500 - 130.68) = 19 557.
  expect(shiftedCct_K(3200, -130.68)).toBeCloseTo(5500, 0);
  expect(shiftedCct_K(5500, -130.68)).toBeCloseTo(19557, -1);
  expect(shiftedCct_K(shiftedCct_K(4000, 37), -37)).toBeCloseTo(4000, 8);
});
