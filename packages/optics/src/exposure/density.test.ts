import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  densityToFactor,
  densityToStops,
  densityToTransmittance,
  factorToDensity,
  lossStops,
  stopsToDensity,
} from "./density.js";

describe("density, stops, factor and transmittance (ISO 5-2: D = log10(1/T); a stop is a factor of two)", () => {
  // The table on every neutral-density filter, as printed: rounded to whole stops and powers of two.
  it.each([
    [0.3, 1, 2, 50],
    [0.6, 2, 4, 25],
    [0.9, 3, 8, 12.5],
    [1.2, 4, 16, 6.25],
    [1.8, 6, 64, 1.5625],
    [3.0, 10, 1000, 0.1],
  ])(
    "density %d is %d stops, factor %d, %d %% (common practice, no published source)",
    (density, stops, factor, percent) => {
      expect(densityToStops(density)).toBeCloseTo(stops, 1);
      expect(densityToFactor(density) / factor).toBeCloseTo(1, 1);
      expect((densityToTransmittance(density) * 100) / percent).toBeCloseTo(1, 1);
    },
  );

  it("one density unit is 3.3219 stops, and one stop 0.30103: log2(10) and log10(2)", () => {
    expect(densityToStops(1)).toBeCloseTo(3.321928, 6);
    expect(stopsToDensity(1)).toBeCloseTo(0.30103, 6);
    expect(factorToDensity(2)).toBeCloseTo(0.30103, 6);
  });

  it("adds up where filters are stacked: stops add and factors multiply", () => {
    const density = fc.double({ min: 0, max: 4, noNaN: true });
    fc.assert(
      fc.property(density, density, (a, b) => {
        expect(densityToStops(a + b)).toBeCloseTo(densityToStops(a) + densityToStops(b), 10);
        expect(densityToTransmittance(a + b)).toBeCloseTo(
          densityToTransmittance(a) * densityToTransmittance(b),
          12,
        );
        expect(factorToDensity(densityToFactor(a))).toBeCloseTo(a, 10);
        expect(stopsToDensity(densityToStops(a))).toBeCloseTo(a, 12);
      }),
      { seed: 50, numRuns: 50 },
    );
  });

  it("a loss to an eighth is three stops; a gain is negative", () => {
    expect(lossStops(800, 100)).toBe(3);
    expect(lossStops(100, 200)).toBe(-1);
  });
});
