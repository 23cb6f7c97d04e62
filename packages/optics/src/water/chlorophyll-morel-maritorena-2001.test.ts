import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { GRID_SIZE, WAVELENGTHS_NM } from "../spectrum/grid.js";
import { kdFromChlorophyll } from "./chlorophyll-morel-maritorena-2001.js";
import { PURE_WATER_ABSORPTION_PER_M, PURE_WATER_KD_PER_M } from "./pure-water.js";

// Morel & Maritorena 2001, J. Geophys. Res. 106, 7163, Table 2.
const rows = readFileSync(new URL("../../tables/morel_maritorena_2001_kd.csv", import.meta.url), "utf8")
  .trim()
  .split("\n")
  .slice(1)
  .map((line) => line.split(",").map(Number));
const index = (nm: number): number => WAVELENGTHS_NM.indexOf(nm);

describe("Kd from chlorophyll", () => {
  it("gives Kw + chi at 1 mg/m3 and Kw + chi 0.3^e at 0.3 mg/m3, over the whole table on the grid", () => {
    const one = kdFromChlorophyll(1);
    const third = kdFromChlorophyll(0.3);
    const onGrid = rows.filter(([nm]) => nm >= 380);
    expect(onGrid).toHaveLength(65);
    for (const [nm, Kw, chi, e] of onGrid) {
      expect(one[index(nm)], `${nm} nm`).toBeCloseTo(Kw + chi, 9);
      expect(third[index(nm)], `${nm} nm`).toBeCloseTo(Kw + chi * 0.3 ** e, 9);
    }
  });

  it("is the published relation between the kept concentrations too, from one end of its range to the other", () => {
    for (const chlorophyll of [0.02, 0.0203, 0.047, 0.11, 0.999, 3.3, 17, 19.9, 20]) {
      const kd = kdFromChlorophyll(chlorophyll);
      for (const [nm, Kw, chi, e] of rows.filter(([nm]) => nm >= 380)) {
        expect(kd[index(nm)], `${nm} nm`).toBeCloseTo(Kw + chi * chlorophyll ** e, 9);
      }
    }
  });

  it("rests on the same pure water as the rest of the model: Kw = a_w + b_w/2 over 400 to 700 nm", () => {
    // The paper takes a_w from Pope & Fry 1997 and b_w from Morel 1974; ours is Zhang 2009, 11 to 13 % lower.
    for (const [nm, Kw] of rows.filter(([nm]) => nm >= 400)) {
      expect(Math.abs(PURE_WATER_KD_PER_M[index(nm)] - Kw), `${nm} nm`).toBeLessThan(6e-4);
    }
  });

  it("answers the hand calculation 0.0166 + 0.07242 * 0.1^0.68955 at 490 nm", () => {
    expect(kdFromChlorophyll(0.1)[index(490)]).toBeCloseTo(0.0166 + 0.0148, 4);
  });

  it("rises with chlorophyll up to 700 nm and is pure water beyond", () => {
    const steps = [0.02, 0.05, 0.2, 1, 5, 20].map((mg_m3) => kdFromChlorophyll(mg_m3));
    for (let i = 0; i < GRID_SIZE; i++) {
      for (let k = 0; k < steps.length; k++) {
        expect(steps[k][i]).toBeGreaterThanOrEqual(PURE_WATER_ABSORPTION_PER_M[i]);
        if (k === 0) continue;
        if (WAVELENGTHS_NM[i] <= 700) expect(steps[k][i]).toBeGreaterThan(steps[k - 1][i]);
        else expect(steps[k][i]).toBe(PURE_WATER_KD_PER_M[i]);
      }
    }
  });

  it.each([0, 0.019, 20.1, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuses %s mg/m3", (value) => {
    expect(() => kdFromChlorophyll(value)).toThrow(
      expect.objectContaining({ code: "chlorophyll_out_of_range" }),
    );
  });
});
