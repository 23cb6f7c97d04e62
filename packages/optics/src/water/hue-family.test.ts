import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { GRID_SIZE, type Spectrum, spectrumFrom, WAVELENGTHS_NM } from "../spectrum/grid.js";
import { kdFromChlorophyll } from "./chlorophyll-morel-maritorena-2001.js";
import { familyKd, lnRemainder, lnTurbidity, SPECTRAL_SHAPE_SIGMA_LN } from "./hue-family.js";
import { type JerlovType, jerlovKd } from "./jerlov-1976.js";
import { PURE_WATER_ABSORPTION_PER_M, PURE_WATER_KD_PER_M } from "./pure-water.js";

const MIXES = [0, 0.25, 0.5, 1, 1.5, 2];

describe("the water family", () => {
  // Jerlov 1976, Marine Optics, Table XXVII, as the family's nodes.
  it.each<[JerlovType, number]>([
    ["I", 0],
    ["IA", 0],
    ["IB", 0],
    ["II", 0],
    ["III", 0],
    ["1C", 1],
    ["3C", 1],
    ["5C", 1],
    ["7C", 1],
    ["9C", 2],
  ])("gives type %s back at its own turbidity and mix %s", (type, mix) => {
    const table = jerlovKd(type);
    const ours = familyKd(Math.exp(lnTurbidity(table)), mix);
    for (let i = 0; i < GRID_SIZE; i++) {
      // Where the table lies below pure water the family holds to pure water plus half a digit.
      const tolerance =
        table[i] - PURE_WATER_KD_PER_M[i] < 5e-4 ? 5e-4 + PURE_WATER_KD_PER_M[i] - table[i] : 1e-9;
      if (WAVELENGTHS_NM[i] <= 700)
        expect(Math.abs(ours[i] - table[i]), `${WAVELENGTHS_NM[i]} nm`).toBeLessThan(tolerance + 1e-9);
      else expect(ours[i]).toBe(PURE_WATER_KD_PER_M[i]);
    }
  });

  it("keeps its turbidity when the hue mix changes", () => {
    for (const mix of MIXES) expect(Math.exp(lnTurbidity(familyKd(0.05, mix)))).toBeCloseTo(0.05, 6);
  });

  it("rises with turbidity at every wavelength and never falls below pure water's absorption", () => {
    for (const mix of MIXES) {
      let before: Spectrum | undefined;
      for (let lnT = Math.log(5e-4); lnT <= Math.log(5); lnT += 0.11) {
        const kd = familyKd(Math.exp(lnT), mix);
        for (let i = 0; i < GRID_SIZE; i++) {
          expect(kd[i]).toBeGreaterThanOrEqual(PURE_WATER_ABSORPTION_PER_M[i]);
          if (before) expect(kd[i]).toBeGreaterThanOrEqual(before[i]);
        }
        before = kd;
      }
    }
  });

  it("has the spread of shape that three published models show at equal turbidity", () => {
    // Morel & Maritorena 2001, Table 2; Austin & Petzold 1986, Table IV; against Jerlov 1976, types IA to III.
    const rows = readFileSync(new URL("../../tables/austin_petzold_1986_model.csv", import.meta.url), "utf8")
      .trim()
      .split("\n")
      .slice(1)
      .map((line) => line.split(",").map(Number));
    const austinPetzold = (k490: number): Spectrum =>
      spectrumFrom((nm, i) => {
        const row = rows.find(([at]) => at === nm);
        return row ? row[1] * (k490 - 0.0224) + row[2] : PURE_WATER_KD_PER_M[i];
      });
    const atTurbidity = (model: (p: number) => Spectrum, lnT: number, from: number, to: number): Spectrum => {
      let low = from;
      let high = to;
      for (let step = 0; step < 50; step++) {
        const middle = Math.sqrt(low * high);
        if (lnTurbidity(model(middle)) < lnT) low = middle;
        else high = middle;
      }
      return model(low);
    };
    const squares: number[] = [];
    for (const type of ["IA", "IB", "II", "III"] as const) {
      const table = lnRemainder(jerlovKd(type));
      const lnT = lnTurbidity(jerlovKd(type));
      const rivals = [
        atTurbidity(kdFromChlorophyll, lnT, 0.02, 20),
        atTurbidity(austinPetzold, lnT, 0.0226, 0.5),
      ];
      for (const rival of rivals) {
        const other = lnRemainder(rival);
        WAVELENGTHS_NM.forEach((nm, i) => {
          if (nm >= 440 && nm <= 600) squares.push((other[i] - table[i]) ** 2);
        });
      }
    }
    const rms = Math.sqrt(squares.reduce((a, b) => a + b, 0) / squares.length);
    expect(Math.abs(rms - SPECTRAL_SHAPE_SIGMA_LN)).toBeLessThan(0.01);
  });
});
