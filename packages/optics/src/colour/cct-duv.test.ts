import { publishedIlluminant } from "@sunfathom/fixtures/illuminants";
import { column, readTable } from "@sunfathom/fixtures/tables";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cctDuv, locusNormal, locusUv, uv1960, xyFromUv1960 } from "./cct-duv.js";
import { planckian } from "./illuminants.js";
import { chromaticity, xyzOf } from "./observer.js";

const cctOf = (spectrum: Float64Array) => {
  const { x, y } = chromaticity(xyzOf(spectrum));
  return cctDuv(x, y);
};
/** Chromaticity at a signed distance from the locus. */
const off = (mired: number, duv: number) => {
  const p = locusUv(mired);
  const n = locusNormal(mired);
  return xyFromUv1960(p.u + duv * n.u, p.v + duv * n.v);
};

describe("correlated colour temperature of CIE illuminants", () => {
  // CIE 15 names A 2856 K, D50 5003 K, D55 5503 K, D65 6504 K, D75 7504 K; duv after Ohno 2014's D65, 0.0032.
  it.each([
    ["A", 2856, 0],
    ["D50", 5003, 0.0032],
    ["D55", 5503, 0.0032],
    ["D65", 6504, 0.0032],
    ["D75", 7504, 0.0032],
  ] as const)("%s is %d K within 0.1 %% and %d above the locus within 3e-4 (CIE 15)", (name, cct, duv) => {
    const found = cctOf(publishedIlluminant(name));
    expect(Math.abs((found.cct_K ?? 0) / cct - 1)).toBeLessThan(1e-3);
    expect(Math.abs(found.duv - duv)).toBeLessThan(3e-4);
  });

  it("returns the temperature of a Planckian radiator from 1100 to 90 000 K", () => {
    for (const T of [1100, 2000, 3200, 5600, 10000, 25000, 90000]) {
      const { cct_K, duv } = cctOf(planckian(T));
      expect(Math.abs(1e6 / (cct_K ?? 0) - 1e6 / T)).toBeLessThan(1e-3);
      expect(Math.abs(duv)).toBeLessThan(1e-7);
    }
  });
});

describe("against the isotemperature lines of Robertson 1968", () => {
  const lines = readTable("robertson_1968_isotemperature_lines");
  const rows = lines.map((_, i) => ({
    mired: column(lines, "mired")[i],
    u: column(lines, "u")[i],
    v: column(lines, "v")[i],
    slope: column(lines, "slope_t")[i],
  }));

  /** Robertson's method: the two lines between which the point lies, and its share of the way. */
  function robertson(u: number, v: number): number {
    const distance = ({ u: ui, v: vi, slope }: (typeof rows)[number]) =>
      (v - vi - slope * (u - ui)) / Math.hypot(1, slope);
    const j = rows.findIndex((row, i) => i > 0 && distance(row) < 0);
    const before = distance(rows[j - 1]);
    const after = distance(rows[j]);
    return rows[j - 1].mired + ((rows[j].mired - rows[j - 1].mired) * before) / (before - after);
  }

  it("has all 31 lines", () => {
    expect(rows.length).toBe(31);
  });

  it.each([-0.015, 0, 0.015])(
    "finds the same temperature at duv %d: within 3 K from 1700 to 6000 K",
    (duv) => {
      for (let mired = 167; mired <= 590; mired += 9) {
        const { x, y } = off(mired, duv);
        const { u, v } = uv1960(x, y);
        expect(Math.abs(1e6 / robertson(u, v) - (cctDuv(x, y).cct_K ?? 0))).toBeLessThan(3);
      }
    },
  );

  it.each([-0.015, 0, 0.015])("and at duv %d within 0.3 mired (1 % at most) up to 50 000 K", (duv) => {
    // Above 6000 K the 5 nm grid, which ends at 380 nm, moves the locus by more than his method errs.
    for (let mired = 20; mired < 167; mired += 7) {
      const { x, y } = off(mired, duv);
      const { u, v } = uv1960(x, y);
      expect(Math.abs(robertson(u, v) - 1e6 / (cctDuv(x, y).cct_K ?? 0))).toBeLessThan(0.3);
    }
  });
});

describe("against the locus integrated at 1 nm from 360 to 830 nm (CIE 15's full range)", () => {
  const cmf = readTable("cie_1931_2deg_cmf_1nm");
  const nm = column(cmf, "wavelength_nm");
  const bars = [column(cmf, "x_bar"), column(cmf, "y_bar"), column(cmf, "z_bar")];

  function fineLocus(mired: number) {
    const power = nm.map((l) => l ** -5 / Math.expm1((1.4388e7 / l) * (mired / 1e6)));
    const [X, Y, Z] = bars.map((bar) => bar.reduce((sum, b, i) => sum + b * power[i], 0));
    return uv1960(X / (X + Y + Z), Y / (X + Y + Z));
  }

  it("the model's 5 nm grid costs less than 0.2 mired from 1050 to 10 000 K: 2 K at 2856 K, 8 K at 6504 K", () => {
    for (const T of [1050, 1500, 2000, 2856, 4000, 5003, 6504, 8000, 10000]) {
      const { u, v } = fineLocus(1e6 / T);
      const { x, y } = xyFromUv1960(u, v);
      const found = cctDuv(x, y);
      expect(Math.abs(1e6 / (found.cct_K ?? 0) - 1e6 / T)).toBeLessThan(0.2);
      expect(Math.abs(found.duv)).toBeLessThan(5e-5);
    }
  });
});

describe("the distance from the locus", () => {
  it("is positive above it, where light is greenish, and negative below (sign of Ohno 2014)", () => {
    const green = cctDuv(0.35, 0.42);
    const pink = cctDuv(0.35, 0.32);
    expect(green.duv).toBeGreaterThan(0);
    expect(pink.duv).toBeLessThan(0);
  });

  it("and the temperature come back from a point laid off the locus along its normal (definition, CIE 15)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 500, noNaN: true }),
        fc.double({ min: -0.03, max: 0.03, noNaN: true }),
        (mired, duv) => {
          const { x, y } = off(mired, duv);
          const found = cctDuv(x, y);
          expect(Math.abs(1e6 / (found.cct_K ?? 0) - mired)).toBeLessThan(0.02);
          expect(Math.abs(found.duv - duv)).toBeLessThan(1e-6);
        },
      ),
      { seed: 2014, numRuns: 40 },
    );
  });
});

it("finds no point of the locus nearer than the one that it names, from anywhere among colours (definition, CIE 15)", () => {
  const locus = Array.from({ length: 991 }, (_, i) => locusUv(10 + i));
  const share = fc.double({ min: 0.01, max: 0.98, noNaN: true });
  fc.assert(
    fc.property(share, share, (x, part) => {
      const y = part * (1 - x);
      const { u, v } = uv1960(x, y);
      const nearest = Math.min(...locus.map((p) => Math.hypot(p.u - u, p.v - v)));
      // Between points a mired apart there may be a nearer one. What a parabola is off of the locus is below 1e-7.
      const found = Math.abs(cctDuv(x, y).duv);
      expect(found).toBeLessThan(nearest + 1e-7);
      expect(found).toBeGreaterThan(nearest - 1e-4);
    }),
    { seed: 1960, numRuns: 2000 },
  );
});

describe("temperature is withheld", () => {
  it.each([0.0501, -0.0501])("at duv %d, where CIE gives it no meaning (beyond 0.05)", (duv) => {
    const { x, y } = off(200, duv);
    const found = cctDuv(x, y);
    expect(found.cct_K).toBeUndefined();
    expect(found).not.toHaveProperty("cct_K");
    expect(found.duv).toBeCloseTo(duv, 5);
  });

  it.each([0.0499, -0.0499])("but not yet at duv %d", (duv) => {
    const { x, y } = off(200, duv);
    expect(cctDuv(x, y).cct_K).toBeCloseTo(5000, -2);
  });

  it("beyond 1000 and 100 000 K, the ends of the search, instead of naming the end", () => {
    expect(cctOf(planckian(950)).cct_K).toBeUndefined();
    expect(cctOf(planckian(120000)).cct_K).toBeUndefined();
  });

  it("for the light of a clear blue sea, where McCamy's formula still returns a number", () => {
    const { x, y } = { x: 0.15, y: 0.18 };
    const n = (x - 0.332) / (0.1858 - y);
    expect(Number.isFinite(449 * n ** 3 + 3525 * n ** 2 + 6823.3 * n + 5520.33)).toBe(true);
    expect(cctDuv(x, y).cct_K).toBeUndefined();
  });
});

describe("CIE 1960 uv", () => {
  it("of D65 is (0.1978, 0.3122) (CIE 15) and leads back to xy", () => {
    const { u, v } = uv1960(0.31272, 0.32903);
    expect(u).toBeCloseTo(0.1978, 4);
    expect(v).toBeCloseTo(0.3122, 4);
    const { x, y } = xyFromUv1960(u, v);
    expect(x).toBeCloseTo(0.31272, 12);
    expect(y).toBeCloseTo(0.32903, 12);
  });
});
