import { numberIn, readTable } from "@sunfathom/fixtures/tables";
import { describe, expect, it } from "vitest";
import { JERLOV_TYPES, jerlovKd } from "./jerlov-1976.js";
import { PURE_WATER_ABSORPTION_PER_M, PURE_WATER_KD_PER_M } from "./pure-water.js";
import { kdUnderSun, REFERENCE_MU0, waterFromKd } from "./water-optics.js";

const every = JERLOV_TYPES.flatMap((type) =>
  [0.5, 1, 2].map((scatteringScale) => ({
    type,
    scatteringScale,
    water: waterFromKd(jerlovKd(type), { scatteringScale }),
  })),
);

describe("a water of given diffuse attenuation", () => {
  it("c = a + b, as at Petzold's eight stations of 1972, where it holds exactly", () => {
    for (const row of readTable("petzold_1972_stations_530nm")) {
      expect(numberIn(row, "a_per_m") + numberIn(row, "b_per_m")).toBeCloseTo(numberIn(row, "c_per_m"), 9);
    }
    for (const { water } of every) {
      water.beam_attenuation_per_m.forEach((c, i) => {
        expect(c).toBeCloseTo(water.absorption_per_m[i] + water.scattering_per_m[i], 14);
      });
    }
  });

  it.each(every)(
    "$type, scattering times $scatteringScale: a >= a_w, Kd >= a_w and mu0 Kd <= c (optical consistency)",
    (w) => {
      const { absorption_per_m, kd_reference_per_m, beam_attenuation_per_m } = w.water;
      absorption_per_m.forEach((a, i) => {
        expect(a).toBeGreaterThanOrEqual(PURE_WATER_ABSORPTION_PER_M[i]);
        expect(kd_reference_per_m[i]).toBeGreaterThanOrEqual(PURE_WATER_ABSORPTION_PER_M[i]);
        expect(REFERENCE_MU0 * kd_reference_per_m[i]).toBeLessThanOrEqual(
          beam_attenuation_per_m[i] * (1 + 1e-12),
        );
      });
    },
  );

  it("keeps mu0 Kd <= c under every sun: mu0 from 0.66, the sun on the horizon (Snell), to 1, overhead", () => {
    for (const { water } of every) {
      for (const mu0 of [0.67, 0.75, 0.85, 1]) {
        kdUnderSun(water, mu0).forEach((k, i) => {
          // Where the table lies below pure water, Kd is raised to a_w and b is what it is.
          expect(mu0 * k).toBeLessThanOrEqual(water.beam_attenuation_per_m[i] * (1 + 1e-12));
          expect(k).toBeGreaterThanOrEqual(PURE_WATER_ABSORPTION_PER_M[i]);
        });
      }
    }
  });

  it.each(JERLOV_TYPES)(
    "%s: Kd rises as the sun sinks, at every wavelength, and is the table's under the reference sun",
    (type) => {
      const water = waterFromKd(jerlovKd(type));
      let higher = kdUnderSun(water, 1);
      for (const mu0 of [0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.67]) {
        const lower = kdUnderSun(water, mu0);
        lower.forEach((k, i) => {
          expect(k).toBeGreaterThanOrEqual(higher[i]);
        });
        higher = lower;
      }
      expect(Array.from(kdUnderSun(water, REFERENCE_MU0))).toEqual(Array.from(water.kd_reference_per_m));
    },
  );

  it("where hardly anything scatters goes as 1 / mu0 (Gordon 1989, as remembered: Kd cos is nearly constant)", () => {
    const water = waterFromKd(jerlovKd("IB"), { scatteringScale: 1e-6 });
    const red = (650 - 380) / 5;
    expect(kdUnderSun(water, 0.72)[red] / kdUnderSun(water, 0.9)[red]).toBeCloseTo(0.9 / 0.72, 3);
  });

  it("scales what lies above pure water, and leaves pure water alone", () => {
    const kd = jerlovKd("1C");
    const scaled = waterFromKd(kd, { kdRemainderScale: 1.5 }).kd_reference_per_m;
    scaled.forEach((k, i) => {
      const pure = PURE_WATER_KD_PER_M[i];
      if (kd[i] > pure) expect(k - pure).toBeCloseTo(1.5 * (kd[i] - pure), 12);
    });
    // Between pure water's absorption and its diffuse attenuation there is nothing to scale.
    const below = PURE_WATER_KD_PER_M.map((pure, i) => (pure + PURE_WATER_ABSORPTION_PER_M[i]) / 2);
    expect(waterFromKd(below, { kdRemainderScale: 3 }).kd_reference_per_m).toEqual(below);
  });
});
