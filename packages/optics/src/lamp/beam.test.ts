import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  beamAngleInWater_deg,
  beamExponent,
  beamShare,
  beamShareOnSubject,
  peakIntensity_cd,
} from "./beam.js";

const RADIAN = Math.PI / 180;

describe("intensity over a beam", () => {
  it("is half of the middle's at half the beam angle (CIE e-ILV 17-27-077)", () => {
    for (const angle of [5, 20, 60, 100, 140, 179]) {
      expect(beamShare(Math.cos((angle / 2) * RADIAN), beamExponent(angle))).toBeCloseTo(0.5, 10);
    }
  });

  it("is Lambert's for 120 degrees, flux / pi in the middle, and flux / (2 pi) for an even hemisphere (definition of the candela)", () => {
    expect(peakIntensity_cd(1000, 120)).toBeCloseTo(1000 / Math.PI, 8);
    expect(peakIntensity_cd(1000, 180)).toBeCloseTo(1000 / (2 * Math.PI), 8);
  });

  it("tends to a Gaussian spot for narrow beams: ln 2 of an even cone's, flux ln 2 / (pi h^2) (exact in the limit)", () => {
    const h = 2.5 * RADIAN;
    expect(peakIntensity_cd(1, 5) / (Math.LN2 / (Math.PI * h * h))).toBeCloseTo(1, 2);
  });

  it("gives back the flux over the hemisphere", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        fc.double({ min: 5, max: 180, noNaN: true }),
        (flux, angle) => {
          // Integral of 2 pi I(t) sin(t) up to 90 degrees, by the midpoint rule.
          const steps = 4000;
          const width = Math.PI / 2 / steps;
          let sum = 0;
          for (let i = 0; i < steps; i++) {
            const t = (i + 0.5) * width;
            sum += beamShare(Math.cos(t), beamExponent(angle)) * Math.sin(t) * width;
          }
          expect(Math.abs((2 * Math.PI * sum * peakIntensity_cd(flux, angle)) / flux - 1)).toBeLessThan(1e-4);
        },
      ),
      { seed: 7, numRuns: 20 },
    );
  });

  it("is nothing behind the lamp", () => {
    expect(beamShare(-0.1, beamExponent(160))).toBe(0);
  });
});

describe("mean over a subject", () => {
  it("is the middle's for a point that is aimed at, and the direction's for one that is not", () => {
    expect(beamShareOnSubject(100, 0, 0)).toBeCloseTo(1, 12);
    expect(beamShareOnSubject(100, 50, 0)).toBeCloseTo(0.5, 10);
  });

  it("is the whole cap's closed form for an aim that is on: (1 - cos^(m+1)) / ((m+1)(1 - cos))", () => {
    for (const [angle, half] of [
      [100, 20],
      [60, 15],
      [30, 15],
    ] as const) {
      const n = beamExponent(angle) + 1;
      const cos = Math.cos(half * RADIAN);
      expect(beamShareOnSubject(angle, 0, half)).toBeCloseTo((1 - cos ** n) / (n * (1 - cos)), 2);
    }
  });

  it.each([
    [70, 12, 18],
    [5, 9, 79],
    [3.7, 9.4, 79],
    [5, 20, 15],
    [20, 9, 8],
    [100, 9, 40],
    [180, 30, 85],
    [150, 80, 60],
  ])(
    "is what fine steps over the cap add up to: beam %s, aim %s off, subject of half angle %s",
    (angle, aim, cap) => {
      const [off, half] = [aim * RADIAN, cap * RADIAN];
      const exponent = beamExponent(angle);
      const steps = 1200;
      let [sum, weight] = [0, 0];
      for (let i = 0; i < steps; i++) {
        const r = ((i + 0.5) / steps) * half;
        for (let k = 0; k < steps; k++) {
          const around = Math.cos((Math.PI * (k + 0.5)) / steps);
          const cos = Math.cos(r) * Math.cos(off) + Math.sin(r) * Math.sin(off) * around;
          sum += cos <= 0 ? 0 : cos ** exponent * Math.sin(r);
          weight += Math.sin(r);
        }
      }
      expect(Math.abs(beamShareOnSubject(angle, aim, cap) / (sum / weight) - 1)).toBeLessThan(3e-4);
    },
  );

  it("never misses a beam that lands on a subject: its flux over the subject's solid angle (conservation of energy)", () => {
    const n = beamExponent(4) + 1;
    for (const aim of [0, 5, 20, 40]) {
      const wanted = 1 / (n * (1 - Math.cos(80 * RADIAN)));
      expect(beamShareOnSubject(4, aim, 80) / wanted).toBeCloseTo(1, 6);
    }
  });
});

describe("a beam behind a flat port", () => {
  it("narrows from 120 to 80.5 degrees and from 180 to 96.6, the whole window (Snell, n = 1.34)", () => {
    // asin(sin 60 / 1.34) = 40.26; asin(1 / 1.34) = 48.27
    expect(beamAngleInWater_deg(120)).toBeCloseTo(80.5, 1);
    expect(beamAngleInWater_deg(180)).toBeCloseTo(96.5, 1);
  });

  it("concentrates a narrow beam n^2 = 1.8 times (small angles)", () => {
    const ratio = peakIntensity_cd(1, beamAngleInWater_deg(2)) / peakIntensity_cd(1, 2);
    expect(ratio).toBeCloseTo(1.34 ** 2, 3);
  });
});
