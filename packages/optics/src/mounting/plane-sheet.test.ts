import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defocusBlur_mm, farthestSharp_mm, focusShift_mm } from "./plane-sheet.js";

describe("plane-parallel sheet behind the lens", () => {
  it("moves the image back by a third of its thickness at n = 1.5 (textbook, exact)", () => {
    expect(focusShift_mm(3, 1.5)).toBeCloseTo(1, 14);
    expect(focusShift_mm(0.1, 1.5)).toBeCloseTo(0.0333, 4);
    expect(focusShift_mm(2, 1)).toBe(0);
  });

  it("agrees with a ray traced through both faces by Snell's law", () => {
    const [t, n, angle] = [1.3, 1.52, 1e-4];
    const inside = Math.asin(Math.sin(angle) / n);
    const traced = t - (t * Math.tan(inside)) / Math.tan(angle);
    expect(focusShift_mm(t, n)).toBeCloseTo(traced, 8);
  });

  it("leaves sharp, with the lens at infinity, what images `shift` behind the focal plane (lens equation)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 200, noNaN: true }),
        fc.double({ min: 0.001, max: 2, noNaN: true }),
        (f, shift) => {
          const image = 1 / (1 / f - 1 / farthestSharp_mm(f, shift));
          expect(image - f).toBeCloseTo(shift, 5);
        },
      ),
      { seed: 15, numRuns: 100 },
    );
    expect(farthestSharp_mm(24, 0)).toBe(Number.POSITIVE_INFINITY);
  });

  it("grows with thickness and index", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        fc.double({ min: 1.01, max: 2, noNaN: true }),
        (t, n) => {
          expect(focusShift_mm(t * 1.1, n)).toBeGreaterThan(focusShift_mm(t, n));
          expect(focusShift_mm(t, n * 1.1)).toBeGreaterThan(focusShift_mm(t, n));
          expect(focusShift_mm(t, n)).toBeLessThan(t);
        },
      ),
      { seed: 16, numRuns: 100 },
    );
  });

  it("blurs by defocus over f-number: 0.1 mm out of focus at f/4 is 0.025 mm (similar triangles)", () => {
    expect(defocusBlur_mm(0.1, 4)).toBeCloseTo(0.025, 15);
  });
});
