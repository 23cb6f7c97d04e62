import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { beamAngleInWater_deg, coneIntensity_cd } from "./beam.js";

describe("intensity of an even cone", () => {
  it("is flux over 4 pi for a full sphere and over 2 pi for a hemisphere (definition of the candela, solid angle)", () => {
    expect(coneIntensity_cd(1000, 360)).toBeCloseTo(1000 / (4 * Math.PI), 10);
    expect(coneIntensity_cd(1000, 180)).toBeCloseTo(1000 / (2 * Math.PI), 10);
  });

  it("is 1782 cd for 4000 lm in 100 degrees, by hand: 2 pi (1 - cos 50) = 2.2445 sr", () => {
    // cos 50 = 0.642788; 1 - cos 50 = 0.357212; times 6.283185 = 2.244430 sr; 4000 / 2.244430 = 1782.19 cd
    expect(coneIntensity_cd(4000, 100)).toBeCloseTo(1782.19, 1);
  });

  it("gives back the flux over its cone", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        fc.double({ min: 1, max: 360, noNaN: true }),
        (flux, angle) => {
          // Integral of I sin(t) over the cone, by the midpoint rule.
          const steps = 2000;
          const half = (angle / 2) * (Math.PI / 180);
          let sum = 0;
          for (let i = 0; i < steps; i++) sum += Math.sin(((i + 0.5) * half) / steps) * (half / steps);
          expect(Math.abs((2 * Math.PI * sum * coneIntensity_cd(flux, angle)) / flux - 1)).toBeLessThan(1e-6);
        },
      ),
      { seed: 7, numRuns: 20 },
    );
  });
});

describe("a beam behind a flat port", () => {
  it("narrows from 120 to 80.5 degrees and from 180 to 96.6, the whole window (Snell, n = 1.34)", () => {
    // asin(sin 60 / 1.34) = 40.26; asin(1 / 1.34) = 48.27
    expect(beamAngleInWater_deg(120)).toBeCloseTo(80.5, 1);
    expect(beamAngleInWater_deg(180)).toBeCloseTo(96.5, 1);
  });

  it("concentrates a narrow beam n^2 = 1.8 times (small angles)", () => {
    const ratio = coneIntensity_cd(1, beamAngleInWater_deg(2)) / coneIntensity_cd(1, 2);
    expect(ratio).toBeCloseTo(1.34 ** 2, 3);
  });
});
