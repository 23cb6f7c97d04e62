import { column, readTable } from "@sunfathom/fixtures/tables";
import { describe, expect, it } from "vitest";
import { fresnelReflectance, refractedAngle_deg, WATER_INDEX } from "./snell-fresnel.js";

const DEG = Math.PI / 180;

describe("refraction and reflection at a flat sea (Snell, Fresnel: exact)", () => {
  it("reflects ((n-1)/(n+1))^2 = 0.0211 straight down at n = 1.34, and passes smoothly into it", () => {
    expect(fresnelReflectance(0)).toBeCloseTo((0.34 / 2.34) ** 2, 15);
    expect(fresnelReflectance(0)).toBeCloseTo(0.0211, 4);
    expect(fresnelReflectance(2e-4)).toBeCloseTo(fresnelReflectance(0), 9);
  });

  it("reflects half of what is polarised across at Brewster's angle, atan(n) = 53.27 degrees, and nothing along", () => {
    const brewster = Math.atan(1.34) / DEG;
    expect(brewster).toBeCloseTo(53.27, 2);
    const water = refractedAngle_deg(brewster);
    expect(brewster + water).toBeCloseTo(90, 10);
    expect(fresnelReflectance(brewster)).toBeCloseTo(Math.sin((brewster - water) * DEG) ** 2 / 2, 12);
  });

  it("reflects all at grazing incidence", () => {
    expect(fresnelReflectance(90)).toBeCloseTo(1, 12);
  });

  it.each([
    [10, 0.0211],
    [30, 0.0219],
    [45, 0.0286],
    [60, 0.0604],
    [75, 0.215],
    [85, 0.587],
  ])("at %d degrees reflects what the amplitude form of Fresnel's equations gives", (angle, rounded) => {
    const cosAir = Math.cos(angle * DEG);
    const cosWater = Math.sqrt(1 - (Math.sin(angle * DEG) / 1.34) ** 2);
    const s = ((cosAir - 1.34 * cosWater) / (cosAir + 1.34 * cosWater)) ** 2;
    const p = ((cosWater - 1.34 * cosAir) / (cosWater + 1.34 * cosAir)) ** 2;
    expect(fresnelReflectance(angle)).toBeCloseTo((s + p) / 2, 12);
    expect(fresnelReflectance(angle)).toBeCloseTo(rounded, 2);
  });

  it("opens a window of half-angle asin(1/n) = 48.3 degrees to the whole sky (Snell)", () => {
    expect(refractedAngle_deg(90)).toBeCloseTo(48.3, 1);
    expect(refractedAngle_deg(0)).toBe(0);
    expect(refractedAngle_deg(45)).toBeCloseTo(Math.asin(Math.SQRT1_2 / 1.34) / DEG, 12);
  });

  it("takes an index inside the range of Quan & Fry 1995 for sea water of 35 psu over the visible", () => {
    const index = readTable("seawater_refractive_index").filter((row) => {
      const nm = Number(row["wavelength_nm"]);
      return nm >= 400 && nm <= 700;
    });
    const n = column(index, "n_vs_air_S35_T20");
    expect(WATER_INDEX).toBeGreaterThan(Math.min(...n));
    expect(WATER_INDEX).toBeLessThan(Math.max(...n));
    // Their value at 590 nm, also the yellow sodium line's neighbourhood.
    expect(n[19]).toBeCloseTo(1.3394, 4);
  });
});
