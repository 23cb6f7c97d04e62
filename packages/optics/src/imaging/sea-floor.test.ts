import { describe, expect, it } from "vitest";
import { refractedAngle_deg } from "../surface/snell-fresnel.js";
import { kirkKd } from "../water/kirk-1984.js";
import { lightField } from "./light-field.js";
import { traceSea } from "./radiance.test-support.js";
import { floorLight } from "./sea-floor.js";

const PHOTONS = 10_000;
/** The last layers of the tracing are as thick as what is left of the water below them. */
const LAYERS_FROM_THE_FLOOR = 2;

const coefficients = (particles_per_m: number, molecules_per_m: number, mu0: number) => ({
  absorption_per_m: 1,
  particles_per_m,
  molecules_per_m,
  kd_per_m: kirkKd(1, particles_per_m + molecules_per_m, mu0),
});

describe("light from a sea floor", () => {
  it("is at the floor what the floor reflects, exactly (Maritorena, Morel & Gentili 1994, their equation at z = H)", () => {
    const at = coefficients(1, 0.1, 0.9);
    for (const reflectance of [0, 0.05, 0.3, 0.5]) {
      const place = { above_m: 0, floorDepth_m: 0.5, deepReflectance: 0.03 };
      expect(0.03 + floorLight(reflectance, place, at).upwelling).toBeCloseTo(reflectance, 12);
    }
  });

  it("over a bottomless sea is that of deep water", () => {
    const far = floorLight(
      0.5,
      { above_m: 50, floorDepth_m: 55, deepReflectance: 0.03 },
      coefficients(1, 0, 0.9),
    );
    expect(far.upwelling).toBeLessThan(1e-12);
    expect(far.gain).toBeCloseTo(1, 12);
  });

  it("over a floor darker than the water takes light away", () => {
    const dark = floorLight(
      0.01,
      { above_m: 0.1, floorDepth_m: 0.5, deepReflectance: 0.05 },
      coefficients(3, 0.3, 0.9),
    );
    expect(dark.upwelling).toBeLessThan(0);
    expect(dark.gain).toBeLessThan(1);
  });

  it("agrees with photon tracing: upwelling within 0.03 of the downwelling light, its gain within 2 % root mean square", () => {
    // Other waters, suns, floors and seeds than those that the two constants were fitted to.
    const off = [
      [0.3, 0.02],
      [2, 0.15],
      [5, 0.05],
    ].flatMap(([particles, molecules], w) =>
      [
        [0.2, 0.4],
        [0.6, 0.2],
        [1.5, 0.5],
      ].flatMap(([floorDepth_m, reflectance], f) => {
        const [sunZenith_deg, directShare] = [35, 0.8];
        const sea = {
          scatteringOverAbsorption: particles,
          molecularOverAbsorption: molecules,
          sunZenith_deg,
          directShare,
        };
        const seed = 9000 + 10 * w + f;
        const deep = traceSea(sea, floorDepth_m, PHOTONS, seed);
        const floor = { absorptionDepth: floorDepth_m, reflectance };
        const sunAngleInWater_deg = refractedAngle_deg(sunZenith_deg);
        const mu0 =
          1 / (directShare / Math.cos((sunAngleInWater_deg * Math.PI) / 180) + (1 - directShare) / 0.84);
        const at = coefficients(particles, molecules, mu0);
        return traceSea({ ...sea, floor }, floorDepth_m, PHOTONS, seed)
          .slice(0, -LAYERS_FROM_THE_FLOOR)
          .map((layer, n) => {
            const depth_m = layer.absorptionDepth;
            const field = lightField({ sunAngleInWater_deg, directShare, depth_m }, at);
            const place = { above_m: floorDepth_m - depth_m, floorDepth_m, deepReflectance: field.upwelling };
            const ours = floorLight(reflectance, place, at);
            return {
              upwelling: ours.upwelling + deep[n].upwelling - layer.upwelling,
              gain: Math.log((ours.gain * deep[n].downwelling) / layer.downwelling),
            };
          });
      }),
    );
    const rms = (values: readonly number[]): number =>
      Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);
    expect(rms(off.map(({ upwelling }) => upwelling))).toBeLessThan(0.03);
    expect(rms(off.map(({ gain }) => gain))).toBeLessThan(0.02);
  });
});
