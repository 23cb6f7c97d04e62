import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refractedAngle_deg } from "../surface/snell-fresnel.js";
import {
  beamShift_mm,
  clearHalfField_deg,
  clearRadiusNeeded_mm,
  lightThroughStops,
  type RoundStop,
} from "./vignetting.js";

const RADIAN = Math.PI / 180;
const inAir = (clear_radius_mm: number, in_air_mm: number): RoundStop => ({
  clear_radius_mm,
  in_air_mm,
  in_water_mm: 0,
});

describe("vignetting by a round filter", () => {
  it("is clear to atan((r - p) / s) in air (geometry, exact)", () => {
    // r = 37, p = 1, s = 36: 45 degrees.
    expect(clearHalfField_deg([inAir(37, 36)], 1)).toBeCloseTo(45, 10);
    expect(lightThroughStops([inAir(37, 36)], 1, 45 - 1e-9)).toBe(1);
    expect(clearRadiusNeeded_mm({ in_air_mm: 36, in_water_mm: 0 }, 1, 45)).toBeCloseTo(37, 12);
  });

  it("lets about half the light through at r = s tan w, and none from r = s tan w - p on", () => {
    expect(lightThroughStops([inAir(36, 36)], 1, 45)).toBeCloseTo(0.5, 1);
    expect(lightThroughStops([inAir(36, 36)], 0.001, 45)).toBeCloseTo(0.5, 4);
    expect(lightThroughStops([inAir(35, 36)], 0.999, 45)).toBe(0);
  });

  it("agrees with rays sent from all over the pupil and counted at the filter", () => {
    const [r, s, p] = [20, 25, 6];
    const grid = 400;
    for (const half of [10, 25, 35, 42, 50]) {
      let inside = 0;
      let all = 0;
      for (let i = 0; i < grid; i++) {
        for (let j = 0; j < grid; j++) {
          const x = p * (-1 + (2 * i + 1) / grid);
          const y = p * (-1 + (2 * j + 1) / grid);
          if (x * x + y * y > p * p) continue;
          all++;
          if (Math.hypot(x + s * Math.tan(half * RADIAN), y) <= r) inside++;
        }
      }
      expect(lightThroughStops([inAir(r, s)], p, half)).toBeCloseTo(inside / all, 2);
    }
  });

  it("counts what lies in water at the angle in water (Snell)", () => {
    const stop = { clear_radius_mm: 30, in_air_mm: 20, in_water_mm: 8 };
    const expected = 20 * Math.tan(50 * RADIAN) + 8 * Math.tan(refractedAngle_deg(50) * RADIAN);
    expect(beamShift_mm(stop, 50)).toBeCloseTo(expected, 13);
    const clear = clearHalfField_deg([stop], 1);
    expect(beamShift_mm(stop, clear)).toBeCloseTo(29, 10);
  });

  it("is never clear where the filter is smaller than the pupil, and dark by the ratio of areas on the axis", () => {
    expect(clearHalfField_deg([inAir(5, 10)], 10)).toBe(0);
    expect(lightThroughStops([inAir(5, 10)], 10, 0)).toBeCloseTo(0.25, 15);
  });

  it("is clear everywhere without a stop", () => {
    expect(lightThroughStops([], 3, 80)).toBe(1);
    expect(clearHalfField_deg([], 3)).toBeCloseTo(90, 10);
  });

  const stopOf = fc.record({
    clear_radius_mm: fc.double({ min: 5, max: 60, noNaN: true }),
    in_air_mm: fc.double({ min: 1, max: 80, noNaN: true }),
    in_water_mm: fc.double({ min: 0, max: 30, noNaN: true }),
  });
  const pupil = fc.double({ min: 0.2, max: 20, noNaN: true });
  const half = fc.double({ min: 0, max: 80, noNaN: true });
  const more = fc.double({ min: 0, max: 15, noNaN: true });

  it("darkens with distance and angle, clears with radius, and no added stop brings light back", () => {
    fc.assert(
      fc.property(stopOf, stopOf, pupil, half, more, (stop, other, p, w, extra) => {
        const light = lightThroughStops([stop], p, w);
        const slack = 1e-9;
        expect(lightThroughStops([{ ...stop, in_air_mm: stop.in_air_mm + extra }], p, w)).toBeLessThanOrEqual(
          light + slack,
        );
        expect(
          lightThroughStops([{ ...stop, in_water_mm: stop.in_water_mm + extra }], p, w),
        ).toBeLessThanOrEqual(light + slack);
        expect(lightThroughStops([stop], p, Math.min(89, w + extra))).toBeLessThanOrEqual(light + slack);
        expect(
          lightThroughStops([{ ...stop, clear_radius_mm: stop.clear_radius_mm + extra }], p, w),
        ).toBeGreaterThanOrEqual(light - slack);
        expect(lightThroughStops([stop, other], p, w)).toBeLessThanOrEqual(light);
        expect(clearHalfField_deg([stop, other], p)).toBeLessThanOrEqual(clearHalfField_deg([stop], p));
      }),
      { seed: 77, numRuns: 300 },
    );
  });

  it("is full just inside the clear field and less just outside", () => {
    fc.assert(
      fc.property(stopOf, pupil, (stop, p) => {
        const clear = clearHalfField_deg([stop], p);
        fc.pre(clear > 1 && clear < 85);
        expect(lightThroughStops([stop], p, clear - 0.01)).toBe(1);
        expect(lightThroughStops([stop], p, clear + 0.5)).toBeLessThan(1);
      }),
      { seed: 78, numRuns: 200 },
    );
  });
});
