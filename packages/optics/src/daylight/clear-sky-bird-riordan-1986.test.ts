import { column, readTable, trapezoid } from "@sunfathom/fixtures/tables";
import { describe, expect, it } from "vitest";
import { BIRD_RIORDAN_1986_WHOLE } from "../data/bird-riordan-1986-whole.js";
import { clearSkyBands, MARITIME_ATMOSPHERE } from "./clear-sky-bird-riordan-1986.js";
import { kastenCzeplakClearSky_W_m2 } from "./kasten-czeplak-1980.js";

const example = readTable("spctrl2_worked_example");

/**
 * The published run, of the report's own program (SERI/TR-215-2436), as the tests of an open solar library carry it (SOURCES.md): zenith 47.912086, relative air mass 1.48995, 101 300 Pa, ozone 0.344 atm cm, water vapour 1.42 cm, aerosol
 * 0.1 at 500 nm with exponent 1.14, albedo 0.2, day 75 of the year.
 */
const ZENITH_DEG = 47.912086;
const ATMOSPHERE = {
  pressure_Pa: 101300,
  ozone_atm_cm: 0.344,
  water_vapour_cm: 1.42,
  aerosol_optical_depth_500nm: 0.1,
  angstrom_exponent: 1.14,
  ground_albedo: 0.2,
  sun_distance_factor: sunDistanceFactor(75),
};

/** Spencer 1971, Search 2, 172: square of mean over actual distance on a day of the year, as the report uses it. */
function sunDistanceFactor(day: number): number {
  const t = (2 * Math.PI * (day - 1)) / 365;
  return (
    1.00011 +
    0.034221 * Math.cos(t) +
    0.00128 * Math.sin(t) +
    0.000719 * Math.cos(2 * t) +
    0.000077 * Math.sin(2 * t)
  );
}

/** The run was computed in single precision and gives its air mass to six digits. */
const TOLERANCE = 5e-6;
const relative = (ours: number, published: number): number => Math.abs(ours / published - 1);

describe("the clear sky of Bird & Riordan 1986 (SERI/TR-215-2436)", () => {
  const run = () => clearSkyBands(ZENITH_DEG, ATMOSPHERE, BIRD_RIORDAN_1986_WHOLE);
  const cosZenith = Math.cos((ZENITH_DEG * Math.PI) / 180);

  it("has the report's 122 bands", () => {
    expect(example.length).toBe(122);
    expect(run().wavelength_nm).toEqual(column(example, "wavelength_nm"));
  });

  it("takes the sun's distance of the example: 1.0108 (Spencer 1971)", () => {
    expect(ATMOSPHERE.sun_distance_factor).toBeCloseTo(1.0108, 4);
  });

  it("replays the direct beam of the report's program, as published with an open solar library, in all 122 bands", () => {
    const bands = run();
    column(example, "direct_normal_W_m2_nm").forEach((published, i) => {
      expect(relative(bands.direct_normal[i], published)).toBeLessThan(TOLERANCE);
    });
  });

  it("replays the diffuse light of the run in all 122 bands", () => {
    const bands = run();
    column(example, "diffuse_horizontal_W_m2_nm").forEach((published, i) => {
      expect(relative(bands.diffuse_horizontal[i], published)).toBeLessThan(TOLERANCE);
    });
  });

  it("replays the global light of the run in all 122 bands", () => {
    const bands = run();
    column(example, "global_horizontal_W_m2_nm").forEach((published, i) => {
      const ours = bands.diffuse_horizontal[i] + bands.direct_normal[i] * cosZenith;
      expect(relative(ours, published)).toBeLessThan(TOLERANCE);
    });
  });
});

it("reads over the grid what it reads in all bands", () => {
  const whole = clearSkyBands(50, MARITIME_ATMOSPHERE, BIRD_RIORDAN_1986_WHOLE);
  const { wavelength_nm, direct_normal, diffuse_horizontal } = clearSkyBands(50);
  const from = whole.wavelength_nm.indexOf(380);
  const to = whole.wavelength_nm.indexOf(780) + 1;
  expect(wavelength_nm).toEqual(whole.wavelength_nm.slice(from, to));
  expect(direct_normal).toEqual(whole.direct_normal.slice(from, to));
  expect(diffuse_horizontal).toEqual(whole.diffuse_horizontal.slice(from, to));
});

describe("clear maritime sky as a whole, 300 to 4000 nm", () => {
  const global_W_m2 = (elevation_deg: number): number => {
    const { wavelength_nm, direct_normal, diffuse_horizontal } = clearSkyBands(
      90 - elevation_deg,
      MARITIME_ATMOSPHERE,
      BIRD_RIORDAN_1986_WHOLE,
    );
    const sin = Math.sin((elevation_deg * Math.PI) / 180);
    return trapezoid(
      wavelength_nm,
      direct_normal.map((d, i) => d * sin + diffuse_horizontal[i]),
    );
  };

  it.each([12, 20, 30, 45, 60, 75, 90])(
    "at %d degrees is brighter than Kasten & Czeplak 1980 measured over Hamburg, by no more than their scatter of 30 %",
    (elevation_deg) => {
      const ratio = global_W_m2(elevation_deg) / kastenCzeplakClearSky_W_m2(elevation_deg);
      expect(ratio).toBeGreaterThan(0.98);
      expect(ratio).toBeLessThan(1.3);
    },
  );

  it.each([12, 20, 30, 45, 60, 75, 90])(
    "at %d degrees is within 10 %% of Haurwitz 1945, 1098 cos(z) exp(-0.059 / cos(z)) (constants from memory)",
    (elevation_deg) => {
      const cos = Math.sin((elevation_deg * Math.PI) / 180);
      expect(relative(global_W_m2(elevation_deg), 1098 * cos * Math.exp(-0.059 / cos))).toBeLessThan(0.1);
    },
  );

  it.each([-0.001, 80.001, 91, Number.NaN])(
    "refuses a zenith of %d, outside the report's domain",
    (zenith) => {
      expect(() => clearSkyBands(zenith)).toThrow(RangeError);
      expect(() => clearSkyBands(zenith)).toThrow(`${zenith} degrees is outside 0 to 80`);
    },
  );

  it("is finite and positive at both ends of the domain", () => {
    for (const zenith of [0, 80]) {
      const { direct_normal, diffuse_horizontal } = clearSkyBands(
        zenith,
        MARITIME_ATMOSPHERE,
        BIRD_RIORDAN_1986_WHOLE,
      );
      expect([...direct_normal, ...diffuse_horizontal].every((v) => Number.isFinite(v) && v >= 0)).toBe(true);
    }
  });
});
