import { atNight, daylightScene, withKd } from "@sunfathom/fixtures/scenes";
import { numberIn, readTable } from "@sunfathom/fixtures/tables";
import { cctDuv, chromaticity, xyzOf } from "@sunfathom/optics";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ASTM_G173_03 } from "../../../optics/src/data/astm-g173-03.js";
import type { DepthLight } from "../result/attenuation.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { attenuation } from "./attenuation.js";

const TYPES = ["I", "IA", "IB", "II", "III", "1C", "3C", "5C", "7C", "9C"];
const LOSSES = [
  "red_loss_stops",
  "green_loss_stops",
  "blue_loss_stops",
  "photopic_loss_stops",
  "par_loss_stops",
] as const;
const LEFT = [
  "red_left_percent",
  "green_left_percent",
  "blue_left_percent",
  "photopic_left_percent",
  "par_left_percent",
] as const;
const g173 = Float64Array.from(ASTM_G173_03.global_tilt37_W_m2_nm);
const at = (type: string, depth: number, sun = 50): DepthLight =>
  attenuation(daylightScene(type, sun, depth)).depths[0];

describe("light at depth", () => {
  it("grows less with depth in every channel of every type, under any sun (law)", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...TYPES),
        fc.integer({ min: 10, max: 90 }),
        fc.double({ min: 0.1, max: 40, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (type, sun, depth, deeper) => {
          const [above, below] = [at(type, depth, sun), at(type, depth + deeper, sun)];
          for (const key of LOSSES) {
            expect(below[key].likely).toBeGreaterThan(above[key].likely);
            expect(above[key].likely).toBeGreaterThan(0);
          }
          below.spectrum_left.forEach((left, i) => {
            expect(left).toBeLessThan(above.spectrum_left[i]);
          });
        },
      ),
      { seed: 1976, numRuns: 30 },
    );
  });

  it("never loses more slowly than pure water absorbs: what is left per wavelength is at most exp(-a_w z) (law: Kd >= a_w)", () => {
    const pure = readTable("water_absorption_pope_fry_1997");
    for (const type of TYPES) {
      const { wavelengths_nm, depths } = attenuation(daylightScene(type, 90, 10));
      for (const row of pure) {
        const i = wavelengths_nm.indexOf(numberIn(row, "wavelength_nm"));
        if (i >= 0)
          expect(depths[0].spectrum_left[i]).toBeLessThanOrEqual(
            Math.exp(-10 * numberIn(row, "a_w_per_m")) * (1 + 1e-12),
          );
      }
    }
  });

  it("multiplies over layers: left at 8 m is left at 3 m times left at 5 m, per wavelength, but not per channel", () => {
    const [three, five, eight] = [3, 5, 8].map((depth) => at("IB", depth));
    eight.spectrum_left.forEach((left, i) => {
      expect(left).toBeCloseTo(three.spectrum_left[i] * five.spectrum_left[i], 12);
    });
    // A single coefficient for red would be wrong: it falls with depth as the light narrows to what passes best.
    expect(eight.red_loss_stops.likely).toBeLessThan(
      three.red_loss_stops.likely + five.red_loss_stops.likely,
    );
  });

  it("says the same in percent as in stops: 100 / 2^stops, with low and high changing places", () => {
    const light = at("II", 12);
    LOSSES.forEach((key, i) => {
      const left = light[LEFT[i]];
      expect(left.likely).toBeCloseTo(100 * 2 ** -light[key].likely, 10);
      expect(left.low).toBeCloseTo(100 * 2 ** -light[key].high, 10);
      expect(left.high).toBeCloseTo(100 * 2 ** -light[key].low, 10);
    });
  });

  it("brackets Jerlov's own Kd of type 1C between a sun overhead and one at 30 degrees, at every wavelength of his table", () => {
    // The tables hold for a high sun, path cosine 0.9: a higher one attenuates less, a lower one more.
    const rows = readTable("jerlov_1976_kd").filter((row) => row["water_type"] === "1C");
    const kdUnder = (sun: number) => {
      const { wavelengths_nm, depths } = attenuation(daylightScene("1C", sun, 1));
      return new Map(wavelengths_nm.map((nm, i) => [nm, -Math.log(depths[0].spectrum_left[i])]));
    };
    const [high, low] = [kdUnder(90), kdUnder(30)];
    for (const row of rows) {
      const nm = numberIn(row, "wavelength_nm");
      if (nm < 400) continue;
      expect(high.get(nm)).toBeLessThan(numberIn(row, "Kd_per_m"));
      expect(low.get(nm)).toBeGreaterThan(numberIn(row, "Kd_per_m"));
    }
  });

  it("loses more under a low sun than under a high one, at the same depth", () => {
    for (const type of TYPES) {
      const [high, low] = [at(type, 10, 80), at(type, 10, 20)];
      for (const key of LOSSES) expect(low[key].likely).toBeGreaterThan(high[key].likely);
    }
  });

  it("loses red first in blue water and blue first in the most turbid (Jerlov 1976: where each type's Kd is least)", () => {
    for (const type of ["I", "IA", "IB", "II", "III"]) {
      const light = at(type, 8);
      expect(light.red_loss_stops.likely).toBeGreaterThan(light.green_loss_stops.likely);
      expect(light.green_loss_stops.likely).toBeGreaterThan(light.blue_loss_stops.likely);
    }
    for (const type of ["7C", "9C"]) {
      const light = at(type, 8);
      expect(light.blue_loss_stops.likely).toBeGreaterThan(light.green_loss_stops.likely);
    }
  });

  it("withholds kelvin beyond |duv| 0.05, where CIE gives it none: by 5 m in 1C to 5C, by 12 m in I to III, never in 9C", () => {
    // The same depths follow from the published tables with the daylight of ASTM G173 in place of the model's.
    const withheld = (type: string, depth: number) => at(type, depth).cct_K === undefined;
    for (const type of ["1C", "3C", "5C"]) expect([type, withheld(type, 5)]).toEqual([type, true]);
    for (const type of ["I", "IA", "IB", "II", "III"])
      expect([type, withheld(type, 12)]).toEqual([type, true]);
    expect(withheld("9C", 20)).toBe(false);
    // 7C creeps up to the limit around 15 to 20 m.
    expect(at("7C", 20).duv).toBeCloseTo(0.05, 2);
    for (const type of [...TYPES.slice(0, 8)]) {
      const { x, y, duv, spectrum_left } = at(type, 9);
      const light = g173.map((e, i) => e * spectrum_left[i]);
      const byG173 = chromaticity(xyzOf(light));
      expect(Math.hypot(byG173.x - x, byG173.y - y)).toBeLessThan(0.015);
      expect(Math.abs(cctDuv(byG173.x, byG173.y).duv - duv)).toBeLessThan(0.003);
    }
    for (const type of TYPES) {
      expect(withheld(type, 0.5)).toBe(false);
      expect(at(type, 0.5).cct_K).toBeGreaterThan(4500);
    }
    const deep = attenuation(daylightScene("IB", 50, 20));
    expect(deep.depths[0]).not.toHaveProperty("cct_K");
    expect(deep.reasons.map((r) => r.code).some((code) => code.startsWith("cct_"))).toBe(true);
  });

  it("names where red is down to a tenth and a hundredth of what enters, by its own spectrum", () => {
    for (const type of ["I", "II", "3C"]) {
      const { red_to_tenth_depth_m, red_to_hundredth_depth_m } = attenuation(daylightScene(type, 50, 5));
      // 600 to 700 nm: pure water absorbs 0.22 to 0.62 per m (Pope & Fry 1997), so a tenth lies within ln 10 / 0.62 and ln 10 / 0.22 m.
      expect(red_to_tenth_depth_m.likely).toBeGreaterThan(2);
      expect(red_to_tenth_depth_m.likely).toBeLessThan(Math.log(10) / 0.22);
      expect(red_to_hundredth_depth_m.likely).toBeGreaterThan(red_to_tenth_depth_m.likely * 1.9);
      expect(red_to_tenth_depth_m.low).toBeLessThan(red_to_tenth_depth_m.high);
    }
  });

  it("does not know names: a type's own table as measured samples gives the same light", () => {
    const samples = readTable("jerlov_1976_kd")
      .filter((row) => row["water_type"] === "3C")
      .map((row) => ({ wavelength_nm: numberIn(row, "wavelength_nm"), kd_per_m: numberIn(row, "Kd_per_m") }));
    const scene = daylightScene("3C", 50, 6);
    const measured = attenuation(withKd(scene, samples)).depths[0];
    expect(measured.spectrum_left).toEqual(at("3C", 6).spectrum_left);
    // A measured water is surer than a class of waters.
    const width = (light: DepthLight) => light.green_loss_stops.high - light.green_loss_stops.low;
    expect(width(measured)).toBeLessThan(width(at("3C", 6)));
  });

  it("gives losses without daylight too, but no illuminance", () => {
    const { depths, reasons } = attenuation(atNight(daylightScene("IB", 50, 10)));
    expect(depths[0].red_loss_stops.likely).toBeGreaterThan(1);
    expect(depths[0]).not.toHaveProperty("illuminance_lx");
    expect(reasons.map((r) => r.code)).toContain("no_daylight_relative");
  });

  it("warns that red below some 20 m in clear water is not the light from above alone (inelastic scattering)", () => {
    const codes = (depth: number) => attenuation(daylightScene("I", 60, depth)).reasons.map((r) => r.code);
    expect(codes(5)).not.toContain("red_not_only_transmitted");
    expect(codes(40)).toContain("red_not_only_transmitted");
  });

  it("tells the doubt of the deepest depth: that of a range is the one at its deep end alone", () => {
    const shareOf = (from_m: number, to_m: number, id: string) =>
      attenuation(daylightScene("1C", 50, from_m, to_m)).uncertainty.find(({ code }) => code === id)?.share;
    for (const id of ["sensor", "water_type_resolution"]) {
      const deep = shareOf(10, 10, id) ?? Number.NaN;
      expect(shareOf(1, 10, id)).toBeCloseTo(deep, 9);
      expect(Math.abs((shareOf(1, 1, id) ?? 0) - deep)).toBeGreaterThan(0.05);
    }
  });

  it("refuses a sun below 10 degrees with the field and what is allowed", () => {
    try {
      attenuation(daylightScene("IB", 9.5, 10));
      expect.unreachable();
    } catch (error) {
      if (!(error instanceof SceneProblem)) throw error;
      expect(error.code).toBe("sun_too_low");
      expect(error.field).toBe("sun_elevation_deg");
    }
  });
});
