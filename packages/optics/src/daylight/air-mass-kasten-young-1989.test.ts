import { expect, it } from "vitest";
import { relativeAirMass } from "./air-mass-kasten-young-1989.js";

// Kasten & Young 1989, Table II (values at whole zenith angles as remembered from it, to their printed digits).
it.each([
  [0, 1.0, 3],
  [60, 1.994, 3],
  [70, 2.904, 2],
  [80, 5.59, 1],
  [90, 38, -1],
])("air mass at a zenith of %d degrees is %d (Kasten & Young 1989)", (zenith, mass, digits) => {
  expect(relativeAirMass(zenith)).toBeCloseTo(mass, digits);
});

it("is 1.48995 at 47.912086 degrees (the run of Bird & Riordan's program that an open solar library publishes; see SOURCES.md)", () => {
  expect(relativeAirMass(47.912086)).toBeCloseTo(1.48995, 5);
});

it("follows the secant of a flat atmosphere within 1 % down to 70 degrees", () => {
  for (let z = 0; z <= 70; z += 5) {
    expect(Math.abs(relativeAirMass(z) * Math.cos((z * Math.PI) / 180) - 1)).toBeLessThan(0.01);
  }
});
