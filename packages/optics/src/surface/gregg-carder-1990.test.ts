import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { surfaceReflectance } from "./gregg-carder-1990.js";
import { fresnelReflectance } from "./snell-fresnel.js";

/** Foam as the paper builds it: air density times drag coefficient times wind squared (stress), with its two drag laws. */
function foamByStress(W: number): number {
  const AIR_DENSITY_g_m3 = 1.2e3;
  if (W <= 4) return 0;
  if (W <= 7) return 2.2e-5 * AIR_DENSITY_g_m3 * (6.2e-4 + 1.56e-3 / W) * W ** 2 - 4.0e-4;
  return (4.5e-5 * AIR_DENSITY_g_m3 * (0.49e-3 + 0.065e-3 * W) - 4.0e-5) * W ** 2;
}

describe("reflectance of a rough sea (Gregg & Carder 1990)", () => {
  it("has no foam up to 4 m/s", () => {
    expect(surfaceReflectance(0, 0).diffuse).toBe(0.066);
    expect(surfaceReflectance(0, 4).diffuse).toBe(0.066);
    expect(surfaceReflectance(30, 4).direct).toBeCloseTo(fresnelReflectance(30), 14);
  });

  it.each([5, 6, 7, 8, 10, 15, 20])("has the paper's foam at %d m/s, and 0.057 for diffuse light", (wind) => {
    const { direct, diffuse } = surfaceReflectance(20, wind);
    expect(diffuse - 0.057).toBeCloseTo(foamByStress(wind), 14);
    expect(direct - fresnelReflectance(20)).toBeCloseTo(foamByStress(wind), 14);
  });

  it("has foam of 1.2e-3 at 7 m/s and 1.7e-2 at 15 m/s (worked by hand from its equations)", () => {
    // 2.2e-5 * 1200 * (6.2e-4 + 2.2286e-4) * 49 - 4e-4 = 1.0904e-3 - 4e-4 = 6.904e-4
    expect(surfaceReflectance(0, 7).diffuse - 0.057).toBeCloseTo(6.904e-4, 6);
    // (4.5e-5 * 1200 * (4.9e-4 + 9.75e-4) - 4e-5) * 225 = (7.911e-5 - 4e-5) * 225 = 8.80e-3
    expect(surfaceReflectance(0, 15).diffuse - 0.057).toBeCloseTo(8.8e-3, 5);
  });

  it("joins its two foam laws at 7 m/s within 3e-4", () => {
    const step = surfaceReflectance(0, 7.000001).diffuse - surfaceReflectance(0, 7).diffuse;
    expect(Math.abs(step)).toBeLessThan(3e-4);
  });

  it("is Fresnel's below 40 degrees at any wind and at any angle below 2 m/s", () => {
    expect(surfaceReflectance(39.9, 3.9).direct).toBeCloseTo(fresnelReflectance(39.9), 14);
    expect(surfaceReflectance(75, 1.9).direct).toBeCloseTo(fresnelReflectance(75), 14);
  });

  it("is 0.0253 exp[(0.0618 - 7.14e-4 W)(z - 40)] beyond, which joins Fresnel's at 40 degrees within 1e-3", () => {
    expect(surfaceReflectance(60, 4).direct).toBeCloseTo(0.0253 * Math.exp((0.0618 - 0.002856) * 20), 14);
    expect(Math.abs(surfaceReflectance(40, 4).direct - fresnelReflectance(40))).toBeLessThan(1e-3);
  });

  it("stays between 0 and 1 and, for a low sun, falls as waves rise (before foam)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 85, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (z, W) => {
          const { direct, diffuse } = surfaceReflectance(z, W);
          expect(direct).toBeGreaterThan(0);
          expect(direct).toBeLessThanOrEqual(1);
          expect(diffuse).toBeGreaterThan(0.05);
          expect(diffuse).toBeLessThan(0.1);
        },
      ),
      { seed: 1990, numRuns: 100 },
    );
    expect(surfaceReflectance(75, 4).direct).toBeLessThan(surfaceReflectance(75, 2).direct);
  });
});
