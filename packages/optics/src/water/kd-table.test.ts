import { column, numberIn, type Row, readTable } from "@sunfathom/fixtures/tables";
import { describe, expect, it } from "vitest";
import { FIRST_NM, STEP_NM } from "../spectrum/grid.js";
import { interpolate } from "../spectrum/resample.js";
import { jerlovKd } from "./jerlov-1976.js";
import { kdFromTable } from "./kd-table.js";
import { PURE_WATER_ABSORPTION_PER_M, PURE_WATER_KD_PER_M } from "./pure-water.js";

const at = (nm: number) => (nm - FIRST_NM) / STEP_NM;

const model = readTable("austin_petzold_1986_model");
const types = readTable("austin_petzold_1986_kd_types");
const typeNames = [...new Set(types.map((row) => row["water_type"]))];
const ofType = (name: string | undefined) => types.filter((row) => row["water_type"] === name);
const rowAt = (rows: readonly Row[], nm: number) => {
  const row = rows.find((r) => Number(r["wavelength_nm"]) === nm);
  if (!row) throw new Error(`no row at ${nm} nm`);
  return row;
};
const M = (nm: number) => numberIn(rowAt(model, nm), "M");
const Kw = (nm: number) => numberIn(rowAt(model, nm), "Kw_per_m");

/** Austin & Petzold 1986, Optical Engineering 25, 471: K(l2) = M(l2)/M(l1) [K(l1) - Kw(l1)] + Kw(l2), from K at 500 nm. */
function austinPetzold(type: string | undefined): (nm: number) => number {
  const remainder = (numberIn(rowAt(ofType(type), 500), "Kd_per_m") - Kw(500)) / M(500);
  return (nm) => M(nm) * remainder + Kw(nm);
}

describe("the model of Austin & Petzold 1986, Table IV, as a witness at 5 nm", () => {
  it("reproduces all 90 values of its types, Table VI, within 0.39 %", () => {
    expect(types.length).toBe(90);
    for (const row of types) {
      const predicted = austinPetzold(row["water_type"])(numberIn(row, "wavelength_nm"));
      expect(Math.abs(predicted / numberIn(row, "Kd_per_m") - 1)).toBeLessThan(0.0039);
    }
  });

  it("carries 0.3196 at 630 nm, not the 0.3296 of some copies: it falls between its neighbours", () => {
    expect(Kw(630)).toBe(0.3196);
  });
});

describe("a coarse table of Kd brought onto the grid", () => {
  const kd = (name: string | undefined) =>
    [column(ofType(name), "wavelength_nm"), column(ofType(name), "Kd_per_m")] as const;

  it.each(typeNames)(
    "type %s: straight interpolation of the 25 nm table reads 10 to 15 %% above Austin & Petzold's 5 nm model at 580 to 590 nm; ours stays within 6 %%",
    (name) => {
      const truth = austinPetzold(name);
      const [x, y] = kd(name);
      const ours = kdFromTable(x, y);
      for (const nm of [580, 585, 590]) {
        const straight = interpolate(x, y, nm) / truth(nm) - 1;
        expect(straight).toBeGreaterThan(0.095);
        expect(straight).toBeLessThan(0.155);
        expect(Math.abs(ours[at(nm)] / truth(nm) - 1)).toBeLessThan(0.06);
      }
    },
  );

  it.each(typeNames)(
    "type %s: over 400 to 700 nm ours is closer to their model than straight interpolation",
    (name) => {
      const truth = austinPetzold(name);
      const [x, y] = kd(name);
      const ours = kdFromTable(x, y);
      const error = (value: (nm: number) => number) => {
        let sum = 0;
        for (let nm = 400; nm <= 700; nm += 5) sum += Math.abs(value(nm) / truth(nm) - 1) / 61;
        return sum;
      };
      // Their pure water is that of Smith & Baker 1981, ours Pope & Fry 1997, so ours cannot match it better than about 2 %.
      expect(error((nm) => ours[at(nm)])).toBeLessThan(0.7 * error((nm) => interpolate(x, y, nm)));
    },
  );

  it.each(["I", "IA", "IB"] as const)(
    "Jerlov %s, with Pope & Fry 1997 for pure water: straight interpolation reads 14 to 21 %% high at 580 to 590 nm",
    (type) => {
      const rows = readTable("jerlov_1976_kd").filter((row) => row["water_type"] === type);
      for (const nm of [580, 585, 590]) {
        const straight = interpolate(column(rows, "wavelength_nm"), column(rows, "Kd_per_m"), nm);
        const high = straight / jerlovKd(type)[at(nm)] - 1;
        expect(high).toBeGreaterThan(0.14);
        expect(high).toBeLessThan(0.21);
      }
    },
  );

  it("carries the part above pure water on from its ends, to 700 nm at most, beyond which pure water stands alone", () => {
    const table = kdFromTable([450, 600], [0.1, 0.5]);
    const above = (nm: number) => table[at(nm)] - PURE_WATER_KD_PER_M[at(nm)];
    for (const nm of [380, 400, 445]) expect(above(nm)).toBeCloseTo(above(450), 12);
    for (const nm of [605, 650, 700]) expect(above(nm)).toBeCloseTo(above(600), 12);
    for (const nm of [705, 780]) expect(above(nm)).toBe(0);
    expect(table[at(450)]).toBeCloseTo(0.1, 12);
    expect(table[at(600)]).toBeCloseTo(0.5, 12);
  });

  it("raises a table that lies below pure water to pure water's absorption", () => {
    const none = kdFromTable([450, 600], [0, 0]);
    for (let nm = 450; nm <= 600; nm += 5) expect(none[at(nm)]).toBe(PURE_WATER_ABSORPTION_PER_M[at(nm)]);
  });
});
