import { describe, expect, it } from "vitest";
import { spectrumFrom } from "../spectrum/grid.js";
import { par_umol_m2_s } from "./par.js";

/** One watt per square metre within the cell of one wavelength. */
const line = (at: number) => spectrumFrom((nm) => (nm === at ? 1 / 5 : 0));

describe("photosynthetically available radiation", () => {
  it("counts 4.598 umol/s per watt at 550 nm: lambda / (h c N_A) with the SI constants of 2019", () => {
    expect(par_umol_m2_s(line(550))).toBeCloseTo(4.598, 3);
  });

  it("counts photons, so that red counts more than blue by the ratio of the wavelengths", () => {
    expect(par_umol_m2_s(line(660)) / par_umol_m2_s(line(440))).toBeCloseTo(1.5, 12);
  });

  it("counts from 400 to 700 nm, the ends half, and nothing beyond", () => {
    expect(par_umol_m2_s(line(395))).toBe(0);
    expect(par_umol_m2_s(line(705))).toBe(0);
    expect(par_umol_m2_s(line(400)) / par_umol_m2_s(line(405))).toBeCloseTo((400 / 405) * 0.5, 12);
  });

  it("gives daylight about 4.57 umol per joule of 400 to 700 nm (McCree 1972, from memory)", () => {
    const flat = spectrumFrom((nm) => (nm >= 400 && nm <= 700 ? 1 : 0));
    expect(Math.abs(par_umol_m2_s(flat) / 300 / 4.57 - 1)).toBeLessThan(0.02);
  });
});
