import { numberIn, readTable } from "@sunfathom/fixtures/tables";
import { describe, expect, it } from "vitest";
import { FIRST_NM, STEP_NM, WAVELENGTHS_NM } from "../spectrum/grid.js";
import { JERLOV_TYPES, jerlovKd } from "./jerlov-1976.js";
import { PURE_WATER_ABSORPTION_PER_M, PURE_WATER_KD_PER_M } from "./pure-water.js";

const at = (nm: number) => (nm - FIRST_NM) / STEP_NM;
const rows = readTable("jerlov_1976_kd");

describe("diffuse attenuation by Jerlov 1976, Table XXVII", () => {
  it("names the ten types from clearest ocean to most turbid coast", () => {
    expect(JERLOV_TYPES).toEqual(["I", "IA", "IB", "II", "III", "1C", "3C", "5C", "7C", "9C"]);
  });

  it.each(JERLOV_TYPES)("%s is the table at the table's own wavelengths, 400 to 700 nm", (type) => {
    const kd = jerlovKd(type);
    for (const row of rows.filter((r) => r["water_type"] === type)) {
      const nm = numberIn(row, "wavelength_nm");
      if (nm < 400) continue;
      // The clearest types lie below pure water at the red end: there the floor of pure-water absorption holds.
      const expected = Math.max(numberIn(row, "Kd_per_m"), PURE_WATER_ABSORPTION_PER_M[at(nm)]);
      expect(kd[at(nm)]).toBeCloseTo(expected, 12);
    }
  });

  it("meets the floor at 675 and 700 nm in type I, by up to 0.064 per m, and at a few more nodes of IA to II", () => {
    const floored = rows.flatMap((row) => {
      const nm = numberIn(row, "wavelength_nm");
      const below = nm < 400 ? 0 : PURE_WATER_ABSORPTION_PER_M[at(nm)] - numberIn(row, "Kd_per_m");
      return below > 0 ? [`${row["water_type"]} ${nm}: ${below.toFixed(3)}`] : [];
    });
    expect(floored).toContain("I 675: 0.028");
    expect(floored).toContain("I 700: 0.064");
    expect(floored.every((f) => /^(I|IA|IB|II) (675|700):/.test(f))).toBe(true);
  });

  it("never falls below the absorption of pure water, at any wavelength of any type (Kd >= a_w)", () => {
    for (const type of JERLOV_TYPES) {
      jerlovKd(type).forEach((k, i) => {
        expect(k).toBeGreaterThanOrEqual(PURE_WATER_ABSORPTION_PER_M[i]);
      });
    }
  });

  it("rises from type to type within the oceanic and within the coastal ones, at every wavelength", () => {
    for (const series of [JERLOV_TYPES.slice(0, 5), JERLOV_TYPES.slice(5)]) {
      for (let t = 1; t < series.length; t++) {
        const clearer = jerlovKd(series[t - 1]);
        jerlovKd(series[t]).forEach((k, i) => {
          expect(k).toBeGreaterThanOrEqual(clearer[i]);
        });
      }
    }
  });

  it("is pure water beyond 700 nm, where no table of the kind goes", () => {
    WAVELENGTHS_NM.forEach((nm, i) => {
      if (nm <= 700) return;
      expect(jerlovKd("5C")[i]).toBe(PURE_WATER_KD_PER_M[i]);
    });
  });
});
