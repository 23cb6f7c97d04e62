import { numberIn, readTable } from "@sunfathom/fixtures/tables";
import { describe, expect, it } from "vitest";
import { FILTER_KINDS, type FilterKind } from "./filter-kinds.js";
import { channelStops, fitFilter } from "./fit-filter.js";
import { filterTransmittance } from "./transmittance.js";

// Worked out again: CIE daylight D55 and the mean sensor from their tables, curves by their formulas, summed over 5 nm.
const rows = readTable("sensor_rgb_mean");
const d55 = new Map(
  readTable("cie_illuminants_5nm")
    .filter((row) => row["illuminant"] === "D55")
    .map((row) => [numberIn(row, "wavelength_nm"), numberIn(row, "relative_power")]),
);
const logistic = (x: number): number => 1 / (1 + Math.exp(-x));
const SHAPES = {
  red: (nm: number) => logistic((580 - nm) / 10),
  magenta: (nm: number) => Math.exp(-(((nm - 540) / 35) ** 2) / 2),
  neutral: () => 1,
};
/** Stops by the definition of the shapes: base 0.035, leakage 0.003. */
function stopsByHand(kind: keyof typeof SHAPES, density: number): number[] {
  return ["mean_R", "mean_G", "mean_B"].map((channel) => {
    let without = 0;
    let passed = 0;
    for (const row of rows) {
      const nm = numberIn(row, "wavelength_nm");
      const light = (d55.get(nm) ?? 0) * numberIn(row, channel);
      without += light;
      passed += light * 10 ** -0.035 * (0.003 + 0.997 * 10 ** (-density * SHAPES[kind](nm)));
    }
    return Math.log2(without / passed);
  });
}

describe("a filter from what a grey card loses", () => {
  it.each([
    ["red", 0.6],
    ["red", 1.5],
    ["magenta", 0.4],
    ["magenta", 1.2],
    ["neutral", 0.9],
  ] as const)(
    "%s of density %d: kind and density come back from stops worked out by hand",
    (kind, density) => {
      const [r, g, b] = stopsByHand(kind, density);
      const fit = fitFilter([r, g, b] as [number, number, number]);
      expect(fit.kind).toBe(kind);
      expect(Math.abs(fit.density - density)).toBeLessThan(0.02);
      expect(fit.residual_stops).toBeLessThan(0.02);
    },
  );

  it.each(FILTER_KINDS)(
    "%s: what the camera's own noise of 0.05 stop moves stays within three standard errors",
    (kind) => {
      const [r, g, b] = channelStops(filterTransmittance(kind as FilterKind, 0.9));
      const fit = fitFilter([r + 0.05, g - 0.05, b + 0.05]);
      expect(fit.kind).toBe(kind);
      expect(Math.abs(fit.density - 0.9)).toBeLessThan(3 * fit.density_standard_error);
    },
  );

  it("that is no filter of any kind leaves a difference that shows", () => {
    expect(fitFilter([0.1, 0.1, 3]).residual_stops).toBeGreaterThan(0.3);
  });
});
