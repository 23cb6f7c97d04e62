import { describe, expect, it } from "vitest";
import { SpectrumTable } from "./spectrum-table.js";

const at = (table: SpectrumTable, x: number): number[] => {
  const out = new Float64Array(table.width);
  table.mixAt(x, out);
  return Array.from(out);
};

describe("spectra kept at steps of a number", () => {
  it("gives any polynomial of the fifth degree back, up to both ends (Lagrange)", () => {
    const quintic = (x: number) => 2 - x + 3 * x ** 2 - 0.5 * x ** 3 + 0.1 * x ** 4 - 0.05 * x ** 5;
    const table = new SpectrumTable(-2, 3, 9, (x) => Float64Array.of(quintic(x), -quintic(x)));
    for (const x of [-2, -1.97, -1, 0.3, 1.234, 2.5, 2.99, 3]) {
      const [value, opposite] = at(table, x);
      expect(value).toBeCloseTo(quintic(x), 11);
      expect(opposite).toBeCloseTo(-quintic(x), 11);
    }
  });

  it("gives what is kept at a step as it is", () => {
    const table = new SpectrumTable(0, 10, 10, (x) => Float64Array.of(Math.sin(x)));
    for (const x of [0, 1, 5, 9, 10]) expect(at(table, x)[0]).toBe(Math.sin(x));
  });

  it("comes nearer by about 2^6 when the steps are halved (error of six points)", () => {
    const off = (steps: number) => {
      const table = new SpectrumTable(0, 3, steps, (x) => Float64Array.of(Math.exp(x)));
      return Math.abs(at(table, 1.5 + 1.5 / steps)[0] - Math.exp(1.5 + 1.5 / steps));
    };
    expect(off(20) / off(40)).toBeGreaterThan(40);
    expect(off(20) / off(40)).toBeLessThan(90);
  });
});
