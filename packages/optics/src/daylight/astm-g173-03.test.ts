// The reference solar spectrum, and the clear-sky model against it.

import { column, readTable, trapezoid } from "@sunfathom/fixtures/tables";
import { describe, expect, it } from "vitest";
import { ASTM_G173_03 } from "../data/astm-g173-03.js";
import { integrate } from "../spectrum/integrate.js";
import { onGrid } from "../spectrum/resample.js";
import { clearSkyBands } from "./clear-sky-bird-riordan-1986.js";

const raw = readTable("astm_g173_03");
const nm = column(raw, "wavelength_nm");

describe("ASTM G173-03", () => {
  it.each([
    ["extraterrestrial_W_m2_nm", 1347.93],
    ["global_tilt37_W_m2_nm", 1000.37],
    ["direct_circumsolar_W_m2_nm", 900.14],
  ] as const)("%s integrates to %d W/m2 from 280 to 4000 nm, as the standard states", (key, total) => {
    expect(trapezoid(nm, column(raw, key))).toBeCloseTo(total, 2);
  });

  it.each(["extraterrestrial_W_m2_nm", "global_tilt37_W_m2_nm", "direct_circumsolar_W_m2_nm"] as const)(
    "%s keeps its energy from 377.5 to 782.5 nm in the means over the cells of the 5 nm grid",
    (key) => {
      const values = column(raw, key);
      const x: number[] = [];
      const y: number[] = [];
      const at = (end: number) => {
        const i = nm.findIndex((v) => v >= end);
        return values[i - 1] + ((values[i] - values[i - 1]) * (end - nm[i - 1])) / (nm[i] - nm[i - 1]);
      };
      x.push(377.5);
      y.push(at(377.5));
      nm.forEach((v, i) => {
        if (v > 377.5 && v < 782.5) {
          x.push(v);
          y.push(values[i]);
        }
      });
      x.push(782.5);
      y.push(at(782.5));
      const cells = 5 * ASTM_G173_03[key].reduce((sum, v) => sum + v, 0);
      expect(Math.abs(cells / trapezoid(x, y) - 1)).toBeLessThan(1e-6);
    },
  );

  it("keeps the energy from 380 to 780 nm within 2e-4 when the 5 nm means are integrated by trapezoid, half cells at the ends", () => {
    const inBand = [...nm.keys()].filter((i) => nm[i] >= 380 && nm[i] <= 780);
    const values = column(raw, "global_tilt37_W_m2_nm");
    const fine = trapezoid(
      inBand.map((i) => nm[i]),
      inBand.map((i) => values[i]),
    );
    const coarse = integrate(Float64Array.from(ASTM_G173_03.global_tilt37_W_m2_nm));
    expect(Math.abs(coarse / fine - 1)).toBeLessThan(2e-4);
  });
});

describe("the clear sky of Bird & Riordan 1986 under the atmosphere of ASTM G173", () => {
  it("has the standard's direct beam in the visible within 5 % (zenith 48.19, ozone 0.34378, vapour 1.4164, aerosol 0.084)", () => {
    const { wavelength_nm, direct_normal } = clearSkyBands(48.19, {
      pressure_Pa: 101325,
      ozone_atm_cm: 0.34378,
      water_vapour_cm: 1.4164,
      aerosol_optical_depth_500nm: 0.084,
      angstrom_exponent: 1.14,
      ground_albedo: 0.1,
      sun_distance_factor: 1,
    });
    const ours = integrate(onGrid(wavelength_nm, direct_normal));
    const standard = integrate(Float64Array.from(ASTM_G173_03.direct_circumsolar_W_m2_nm));
    expect(Math.abs(ours / standard - 1)).toBeLessThan(0.05);
  });
});
