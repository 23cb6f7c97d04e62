import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { add, multiply, pathTransmittance, scale } from "./combine.js";
import { GRID_SIZE, spectrumFrom, WAVELENGTHS_NM } from "./grid.js";
import { integrate, integrateProduct, integrateTriple } from "./integrate.js";

const number = fc.double({ min: -10, max: 10, noNaN: true });
const spectrum = fc
  .array(number, { minLength: GRID_SIZE, maxLength: GRID_SIZE })
  .map((v) => Float64Array.from(v));

describe("the grid", () => {
  it("runs from 380 to 780 nm in steps of 5 nm, as CIE 15 allows for colorimetry", () => {
    expect(GRID_SIZE).toBe(81);
    expect(WAVELENGTHS_NM[0]).toBe(380);
    expect(WAVELENGTHS_NM[80]).toBe(780);
    expect(WAVELENGTHS_NM[36]).toBe(560);
  });
});

describe("integration by the trapezoid rule", () => {
  it("is exact for a straight line: the integral of m x + c from 380 to 780 (calculus)", () => {
    fc.assert(
      fc.property(number, number, (m, c) => {
        const exact = (m * (780 ** 2 - 380 ** 2)) / 2 + c * 400;
        expect(integrate(spectrumFrom((nm) => m * nm + c))).toBeCloseTo(exact, 6);
      }),
      { seed: 1, numRuns: 50 },
    );
  });

  it("of a parabola is too large by h^2/12 times the change of slope (Euler and Maclaurin)", () => {
    const exact = (780 ** 3 - 380 ** 3) / 3;
    const error = (25 / 12) * (2 * 780 - 2 * 380);
    expect(integrate(spectrumFrom((nm) => nm * nm))).toBeCloseTo(exact + error, 5);
  });

  it("of products agrees with the integral of the product", () => {
    fc.assert(
      fc.property(spectrum, spectrum, spectrum, (a, b, c) => {
        expect(integrateProduct(a, b)).toBeCloseTo(integrate(multiply(a, b)), 6);
        expect(integrateTriple(a, b, c)).toBeCloseTo(integrate(multiply(multiply(a, b), c)), 5);
      }),
      { seed: 2, numRuns: 30 },
    );
  });

  it("is linear", () => {
    fc.assert(
      fc.property(spectrum, spectrum, number, (a, b, k) => {
        expect(integrate(add(a, scale(b, k)))).toBeCloseTo(integrate(a) + k * integrate(b), 6);
      }),
      { seed: 3, numRuns: 30 },
    );
  });
});

describe("a path", () => {
  it("halves the light over ln 2 attenuation lengths, and lets all through over none", () => {
    const attenuation = spectrumFrom((nm) => nm / 1000);
    expect(pathTransmittance(attenuation, Math.LN2 / 0.5)[(500 - 380) / 5]).toBeCloseTo(0.5, 14);
    expect(pathTransmittance(attenuation, 0)).toEqual(spectrumFrom(() => 1));
  });

  it("lets through what two paths in a row let through (Bouguer, Lambert, Beer)", () => {
    const metre = fc.double({ min: 0, max: 30, noNaN: true });
    const attenuation = spectrumFrom((nm) => nm / 1000);
    fc.assert(
      fc.property(metre, metre, (first, second) => {
        const both = pathTransmittance(attenuation, first + second);
        const inRow = multiply(pathTransmittance(attenuation, first), pathTransmittance(attenuation, second));
        both.forEach((t, i) => {
          expect(t).toBeCloseTo(inRow[i], 12);
        });
      }),
      { seed: 4, numRuns: 20 },
    );
  });
});
