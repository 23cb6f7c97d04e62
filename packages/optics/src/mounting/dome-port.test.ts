import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { domeImageDistance, domeObjectDistance } from "./dome-port.js";

const length = fc.double({ min: 1, max: 1e5, noNaN: true });

describe("dome port", () => {
  it("shows infinity three radii in front of its vertex, four from its centre, at n = 4/3 (textbook, exact)", () => {
    expect(domeImageDistance(100, Number.POSITIVE_INFINITY, 4 / 3)).toBeCloseTo(300, 10);
  });

  it("agrees with rays traced through the sphere near the axis by Snell's law in vector form", () => {
    const R = 100;
    const n = 1.34;
    for (const d of [200, 1000, 1e7]) {
      // Vertex at 0, centre at +R (towards the lens), object on the axis at -d. The ray meets the dome at a small height h.
      const h = 0.01;
      const x = R - Math.sqrt(R * R - h * h);
      const toSurface = Math.atan2(h, x + d);
      const normal = -Math.asin(h / R);
      const inWater = toSurface - normal;
      const inAir = Math.asin(n * Math.sin(inWater));
      const slope = Math.tan(inAir + normal);
      expect(-(x - h / slope) / domeImageDistance(R, d, n)).toBeCloseTo(1, 5);
    }
  });

  it("becomes a flat port as its radius grows: images at d / n", () => {
    expect(domeImageDistance(1e12, 1000, 4 / 3)).toBeCloseTo(750, 4);
  });

  it("shows nothing beyond R / (n - 1), and nearer things nearer", () => {
    fc.assert(
      fc.property(length, length, length, (R, a, b) => {
        const far = domeImageDistance(R, Number.POSITIVE_INFINITY);
        expect(domeImageDistance(R, a)).toBeLessThan(far);
        expect(domeImageDistance(R, a) - domeImageDistance(R, b)).toSatisfy(
          (difference: number) =>
            Math.sign(difference) === Math.sign(a - b) || Math.abs(difference) < 1e-9 * far,
        );
      }),
      { seed: 3, numRuns: 100 },
    );
  });

  it("can be read backwards, and says Infinity for images that nothing throws", () => {
    fc.assert(
      fc.property(length, fc.double({ min: 0.01, max: 1e3, noNaN: true }), (R, ratio) => {
        expect(domeObjectDistance(R, domeImageDistance(R, ratio * R)) / (ratio * R)).toBeCloseTo(1, 8);
      }),
      { seed: 4, numRuns: 100 },
    );
    expect(domeObjectDistance(100, 300.1, 4 / 3)).toBe(Number.POSITIVE_INFINITY);
  });
});
