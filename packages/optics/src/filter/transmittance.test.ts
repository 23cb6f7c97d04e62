import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { multiply } from "../spectrum/combine.js";
import { densityShape, FILTER_KINDS } from "./filter-kinds.js";
import { BASE_DENSITY, CLEAR, filterTransmittance, LEAKAGE, measuredTransmittance } from "./transmittance.js";

const kind = fc.constantFrom(...FILTER_KINDS);
const density = fc.double({ min: 0, max: 3, noNaN: true });

describe("a filter of a kind and density", () => {
  it("without dye is a clear plate: two surfaces of 4 % each pass 92.2 % (Fresnel at n = 1.5; density 0.035)", () => {
    const perSurface = 1 - (0.5 / 2.5) ** 2;
    const plate = filterTransmittance("red", 0);
    expect(plate[0]).toBeCloseTo(perSurface ** 2, 2);
    expect(new Set(plate).size).toBe(1);
    expect(BASE_DENSITY).toBeCloseTo(-Math.log10(perSurface ** 2), 3);
  });

  it("has its nominal density above base at its peak, but for the leakage (ISO 5-2: D = -log10 T)", () => {
    const red = filterTransmittance("neutral", 0.9);
    expect(-Math.log10(red[0])).toBeCloseTo(
      BASE_DENSITY - Math.log10(LEAKAGE + (1 - LEAKAGE) * 10 ** -0.9),
      12,
    );
    expect(-Math.log10(red[0]) - BASE_DENSITY).toBeCloseTo(0.9, 1);
  });

  it("passes never more at any wavelength when it is denser", () => {
    fc.assert(
      fc.property(kind, density, density, (k, a, b) => {
        const weak = filterTransmittance(k, Math.min(a, b));
        const dense = filterTransmittance(k, Math.max(a, b));
        dense.forEach((t, i) => {
          expect(t).toBeLessThanOrEqual(weak[i]);
          expect(t).toBeGreaterThan(0);
          expect(t).toBeLessThan(1);
        });
      }),
      { seed: 5, numRuns: 60 },
    );
  });

  it("adds its density to that of another one of its kind, to the leakage and the second base (ISO 5-2)", () => {
    fc.assert(
      fc.property(kind, density, density, (k, a, b) => {
        const stacked = multiply(filterTransmittance(k, a), filterTransmittance(k, b));
        const one = filterTransmittance(k, a + b);
        const shape = densityShape(k);
        stacked.forEach((t, i) => {
          // The stack leaks at most L (T_a + T_b) + L^2 beyond the dye, a single plate at most L.
          const dye = 10 ** (-(a + b) * shape[i]);
          const base = 10 ** -BASE_DENSITY;
          expect(Math.abs(t / base ** 2 - dye)).toBeLessThan(2 * LEAKAGE + LEAKAGE ** 2);
          expect(Math.abs(one[i] / base - dye)).toBeLessThanOrEqual(LEAKAGE);
        });
      }),
      { seed: 6, numRuns: 60 },
    );
  });
});

describe("a measured curve", () => {
  it("is the measurement at its nodes, straight between them, and its end values beyond", () => {
    const curve = measuredTransmittance([400, 500, 700], [0.1, 0.3, 0.9]);
    const at = (nm: number) => curve[(nm - 380) / 5];
    expect([at(400), at(500), at(700)]).toEqual([0.1, 0.3, 0.9]);
    expect(at(450)).toBeCloseTo(0.2, 12);
    expect([at(380), at(780)]).toEqual([0.1, 0.9]);
  });

  it("of nothing at all passes everything", () => {
    expect(new Set(CLEAR)).toEqual(new Set([1]));
  });
});
