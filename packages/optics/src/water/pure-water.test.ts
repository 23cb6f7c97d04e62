import { column, numberIn, readTable } from "@sunfathom/fixtures/tables";
import { describe, expect, it } from "vitest";
import { FIRST_NM, STEP_NM } from "../spectrum/grid.js";
import {
  PURE_WATER_ABSORPTION_PER_M,
  PURE_WATER_KD_PER_M,
  PURE_WATER_SCATTERING_PER_M,
} from "./pure-water.js";

const at = (nm: number) => (nm - FIRST_NM) / STEP_NM;

describe("absorption of pure water", () => {
  it("is Pope & Fry 1997, Table 3, at every node of the grid that it reaches", () => {
    const rows = readTable("water_absorption_pope_fry_1997").filter(
      (row) => Number(row["wavelength_nm"]) % 5 === 0,
    );
    expect(rows.length).toBe(70);
    for (const row of rows) {
      expect(PURE_WATER_ABSORPTION_PER_M[at(numberIn(row, "wavelength_nm"))]).toBe(
        numberIn(row, "a_w_per_m"),
      );
    }
  });

  it("has its minimum where they found it, near 417.5 nm: 0.00442 per m there, 0.00444 on the grid", () => {
    const least = Math.min(...PURE_WATER_ABSORPTION_PER_M);
    expect(PURE_WATER_ABSORPTION_PER_M.indexOf(least)).toBe(at(415));
    expect(least).toBe(0.00444);
  });

  it("goes on beyond 727.5 nm with Röttgers et al. 2016 and joins it within 6 % at 726 nm, where both have a value", () => {
    const wopp = readTable("water_absorption_wopp_v3").filter((row) => {
      const nm = Number(row["wavelength_nm"]);
      return nm >= 730 && nm <= 780 && nm % 10 === 0;
    });
    for (const row of wopp) {
      expect(PURE_WATER_ABSORPTION_PER_M[at(numberIn(row, "wavelength_nm"))]).toBe(
        numberIn(row, "a_w_20C_fresh_per_m"),
      );
    }
    const seam = readTable("water_absorption_wopp_v3").find((row) => row["wavelength_nm"] === "726");
    if (!seam) throw new Error("no row at 726 nm");
    const popeFry = readTable("water_absorption_pope_fry_1997");
    const [before, after] = [725, 727.5].map((nm) => {
      const row = popeFry.find((r) => Number(r["wavelength_nm"]) === nm);
      return row ? numberIn(row, "a_w_per_m") : Number.NaN;
    });
    const there = before + ((after - before) * 1) / 2.5;
    expect(Math.abs(there / numberIn(seam, "a_w_20C_fresh_per_m") - 1)).toBeLessThan(0.06);
  });
});

describe("scattering of pure sea water", () => {
  it("is Zhang, Hu & He 2009, which lies 11 to 13 % below Morel 1974 from 400 to 520 nm and 7 % at 700 nm", () => {
    for (const row of readTable("seawater_scattering")) {
      const nm = Number(row["wavelength_nm"]);
      if (nm < 400 || nm > 700) continue;
      const ours = PURE_WATER_SCATTERING_PER_M[at(nm)];
      expect(ours).toBeCloseTo(numberIn(row, "b_zhang2009_S35_T20_per_m"), 7);
      const below = 1 - ours / numberIn(row, "b_morel1974_formula_per_m");
      expect(below).toBeGreaterThan(nm <= 520 ? 0.11 : 0.07);
      expect(below).toBeLessThan(0.13);
    }
  });
});

describe("diffuse attenuation of pure sea water, Kw = a_w + b_w / 2", () => {
  const mm = readTable("morel_maritorena_2001_kd").filter((row) => {
    const nm = Number(row["wavelength_nm"]);
    return nm >= 400 && nm <= 700;
  });
  const morel = new Map(
    readTable("seawater_scattering").map((row) => [row["wavelength_nm"], row["b_morel1974_formula_per_m"]]),
  );

  it("is Morel & Maritorena 2001, Table 2, to 6e-5 per m with the scattering that they used (Morel 1974)", () => {
    expect(mm.length).toBe(61);
    for (const row of mm) {
      const nm = numberIn(row, "wavelength_nm");
      const withTheirs = PURE_WATER_ABSORPTION_PER_M[at(nm)] + Number(morel.get(String(nm))) / 2;
      expect(Math.abs(withTheirs - numberIn(row, "Kw_per_m"))).toBeLessThan(6.5e-5);
    }
  });

  it("with Zhang's newer scattering is below theirs by 6e-5 to 5e-4 per m, half of what the two scatterings differ by", () => {
    const differences = mm.map(
      (row) => numberIn(row, "Kw_per_m") - PURE_WATER_KD_PER_M[at(numberIn(row, "wavelength_nm"))],
    );
    expect(Math.max(...differences.map(Math.abs))).toBeLessThan(5e-4);
  });

  it("agrees with the clearest sea water of Smith & Baker 1981 within a quarter from 450 nm on, and is clearer in the violet", () => {
    const rows = readTable("water_smith_baker_1981").filter((row) => {
      const nm = Number(row["wavelength_nm"]);
      return nm >= 450 && nm <= 700;
    });
    const ratio = rows.map(
      (row) => PURE_WATER_KD_PER_M[at(numberIn(row, "wavelength_nm"))] / numberIn(row, "Kd_clearest_per_m"),
    );
    expect(Math.max(...ratio)).toBeLessThan(1.25);
    expect(Math.min(...ratio)).toBeGreaterThan(0.55);
  });
});

describe("Smith & Baker 1981, Table I, as another witness of Kw = a_w + b_w / 2", () => {
  it("holds row by row within the rounding of three digits, except 200 and 710 nm", () => {
    const rows = readTable("water_smith_baker_1981");
    const off = rows.filter((row) => {
      const kd = numberIn(row, "Kd_clearest_per_m");
      const sum = numberIn(row, "a_w_per_m") + numberIn(row, "b_seawater_per_m") / 2;
      return Math.abs(kd - sum) > Math.max(3e-4, 1.1 * 10 ** (Math.floor(Math.log10(kd)) - 2) * 0.5);
    });
    expect(column(off, "wavelength_nm")).toEqual([710]);
  });
});
