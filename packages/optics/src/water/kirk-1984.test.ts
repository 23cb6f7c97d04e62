import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { kirkAbsorption, kirkKd, kirkKdRatio } from "./kirk-1984.js";

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("Kd of Kirk 1984", () => {
  it("is a / mu0 without scattering, and 1.517 a at mu0 = 0.86 and b = 4 a, by hand", () => {
    expect(kirkKd(0.05, 0, 0.86)).toBeCloseTo(0.05 / 0.86, 14);
    // (0.425 * 0.86 - 0.19) = 0.1755; 1 + 0.1755 * 4 = 1.702; sqrt = 1.304607; / 0.86 = 1.516985 times a.
    expect(kirkKd(0.1, 0.4, 0.86)).toBeCloseTo(0.1516985, 6);
  });

  it("with the sun overhead is sqrt(a^2 + 0.235 a b), close to the 0.256 a b of his first paper (Kirk 1981, from memory)", () => {
    expect(kirkKd(0.2, 1, 1)).toBeCloseTo(Math.sqrt(0.04 + 0.235 * 0.2), 12);
    expect(Math.abs(kirkKd(0.2, 1, 1) / Math.sqrt(0.04 + 0.256 * 0.2) - 1)).toBeLessThan(0.03);
  });

  it("has the ratio between two suns that its two values have", () => {
    fc.assert(
      fc.property(
        positive(0.005, 5),
        positive(0, 5),
        positive(0.66, 1),
        positive(0.66, 1),
        (a, b, mu0, other) => {
          const ratio = kirkKd(a, b, mu0) / kirkKd(a, b, other);
          expect(Math.abs(kirkKdRatio(a, b, mu0, other) / ratio - 1)).toBeLessThan(1e-14);
        },
      ),
      { seed: 1984 },
    );
  });

  it("gives back the absorption that it came from, over its domain of b/a up to 30", () => {
    fc.assert(
      fc.property(positive(1e-3, 3), positive(0, 30), positive(0.5, 1), (a, ratio, mu0) => {
        const b = ratio * a;
        const back = kirkAbsorption(kirkKd(a, b, mu0), b, mu0);
        expect(Math.abs(back / a - 1)).toBeLessThan(1e-10);
      }),
      { seed: 1984, numRuns: 100 },
    );
  });

  it("rises with absorption, with scattering and with a sinking sun", () => {
    fc.assert(
      fc.property(positive(1e-3, 3), positive(0, 30), positive(0.6, 0.99), (a, ratio, mu0) => {
        const b = ratio * a;
        const kd = kirkKd(a, b, mu0);
        expect(kirkKd(a * 1.01, b, mu0)).toBeGreaterThan(kd);
        expect(kirkKd(a, b * 1.01 + 1e-6, mu0)).toBeGreaterThan(kd);
        expect(kirkKd(a, 0, mu0 * 0.99)).toBeGreaterThan(kirkKd(a, 0, mu0));
        expect(kirkKd(a, b, mu0)).toBeGreaterThan(a);
      }),
      { seed: 1985, numRuns: 100 },
    );
  });
});
