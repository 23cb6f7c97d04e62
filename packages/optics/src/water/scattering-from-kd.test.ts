import { describe, expect, it } from "vitest";
import { numberIn, readTable } from "../../../../test/support/tables.js";
import { FIRST_NM, STEP_NM, spectrumFrom, WAVELENGTHS_NM } from "../spectrum/grid.js";
import { interpolate } from "../spectrum/resample.js";
import { JERLOV_TYPES, type JerlovType, jerlovKd } from "./jerlov-1976.js";
import { PURE_WATER_KD_PER_M, PURE_WATER_SCATTERING_PER_M } from "./pure-water.js";
import { scatteringFromKd } from "./scattering-from-kd.js";
import { waterFromKd } from "./water-optics.js";

const at = (nm: number) => (nm - FIRST_NM) / STEP_NM;
const grid = Array.from(WAVELENGTHS_NM);
const valueAt = (spectrum: Float64Array, nm: number) => interpolate(grid, Array.from(spectrum), nm);

/** Williamson & Hollins 2022, Applied Optics 61, 9951: measured a and b per type. */
const measured = readTable("williamson_hollins_2022_measured_iop").map((row) => ({
  type: JERLOV_TYPES.find((name) => name === row["water_type"]) ?? ("unknown" as JerlovType),
  quantity: row["quantity"],
  nm: numberIn(row, "wavelength_nm"),
  value: numberIn(row, "value_per_m"),
  sd: row["std_dev_per_m"] === "" ? undefined : numberIn(row, "std_dev_per_m"),
}));
const MEASURED_TYPES = JERLOV_TYPES.filter((type) => measured.some((m) => m.type === type));

function fit(x: number[], y: number[]) {
  const n = x.length;
  const [sx, sy] = [x, y].map((v) => v.reduce((s, e) => s + e, 0));
  const sxx = x.reduce((s, e) => s + e * e, 0);
  const sxy = x.reduce((s, e, i) => s + e * y[i], 0);
  const slope = (n * sxy - sx * sy) / (n * sxx - sx * sx);
  const intercept = (sy - slope * sx) / n;
  const residual = y.reduce((s, e, i) => s + (e - intercept - slope * x[i]) ** 2, 0);
  return { slope, intercept, sd: Math.sqrt(residual / (n - 2)) };
}

describe("scattering from diffuse attenuation", () => {
  it("is b_w + 5.76 r^0.968 (555/nm)^x, x = 0.096 - 0.259 ln(5.76 r^0.968) within 0 to 1, at any r = (Kd - Kw)(555)", () => {
    for (const remainder of [1e-4, 0.002, 0.0049, 0.02, 0.0377, 0.1, 0.24, 1, 5]) {
      const kd = spectrumFrom((_, i) => PURE_WATER_KD_PER_M[i] + remainder);
      const particles = 5.76 * Math.max(5e-4, remainder) ** 0.968;
      const exponent = Math.min(1, Math.max(0, 0.096 - 0.259 * Math.log(particles)));
      scatteringFromKd(kd, 1.3).forEach((b, i) => {
        const expected = 1.3 * particles * (555 / WAVELENGTHS_NM[i]) ** exponent;
        expect(Math.abs((b - PURE_WATER_SCATTERING_PER_M[i]) / expected - 1)).toBeLessThan(1e-9);
      });
    }
  });

  const perType = MEASURED_TYPES.map((type) => {
    const b = measured.filter((m) => m.type === type && m.quantity === "b");
    const particles = b.map(
      (m) => m.value - PURE_WATER_SCATTERING_PER_M[Math.round((m.nm - FIRST_NM) / STEP_NM)],
    );
    const spectral = fit(
      b.map((m) => Math.log(m.nm / 555)),
      particles.map(Math.log),
    );
    return {
      lnRemainder: Math.log(jerlovKd(type)[at(555)] - PURE_WATER_KD_PER_M[at(555)]),
      lnParticles: Math.log(particles[b.findIndex((m) => m.nm === 555)]),
      exponent: -spectral.slope,
    };
  });

  it("rests on eight types, IA to 7C", () => {
    expect(MEASURED_TYPES).toEqual(["IA", "IB", "II", "III", "1C", "3C", "5C", "7C"]);
  });

  it("has the coefficients that least squares gives on Williamson & Hollins 2022 against Jerlov 1976", () => {
    const magnitude = fit(
      perType.map((t) => t.lnRemainder),
      perType.map((t) => t.lnParticles),
    );
    const exponent = fit(
      perType.map((t) => t.lnParticles),
      perType.map((t) => t.exponent),
    );
    expect(Math.exp(magnitude.intercept)).toBeCloseTo(5.76, 2);
    expect(magnitude.slope).toBeCloseTo(0.968, 3);
    expect(magnitude.sd).toBeCloseTo(0.25, 2);
    expect(exponent.intercept).toBeCloseTo(0.096, 3);
    expect(exponent.slope).toBeCloseTo(-0.259, 3);
    // And the function uses them: particles of a water with 0.1 per m above pure water at 555 nm.
    const kd = spectrumFrom((_, i) => PURE_WATER_KD_PER_M[i] + 0.1);
    const particles = Math.exp(magnitude.intercept) * 0.1 ** magnitude.slope;
    const ours = scatteringFromKd(kd);
    expect((ours[at(555)] - PURE_WATER_SCATTERING_PER_M[at(555)]) / particles).toBeCloseTo(1, 2);
    const slope = exponent.intercept + exponent.slope * Math.log(particles);
    expect((ours[at(440)] - PURE_WATER_SCATTERING_PER_M[at(440)]) / particles).toBeCloseTo(
      (555 / 440) ** slope,
      2,
    );
  });

  it.each(MEASURED_TYPES)(
    "%s: scattering is the measured one within a factor of 1.6, at every wavelength",
    (type) => {
      const ours = scatteringFromKd(jerlovKd(type));
      for (const m of measured.filter((e) => e.type === type && e.quantity === "b")) {
        const ratio = valueAt(ours, m.nm) / m.value;
        expect(Math.max(ratio, 1 / ratio)).toBeLessThan(1.6);
      }
    },
  );

  it("leaves absorption within two standard deviations, or within 35 %, of the measured one but for four points", () => {
    // Coastal types of the table hold back more violet and blue than the coastal campaigns met; IA rests on one campaign.
    const outside = measured.flatMap(({ type, quantity, nm, value, sd }) => {
      if (quantity !== "a") return [];
      const ours = valueAt(waterFromKd(jerlovKd(type)).absorption_per_m, nm);
      const near = Math.abs(ours / value - 1) < 0.35 || (sd !== undefined && Math.abs(ours - value) < 2 * sd);
      return near ? [] : [`${type} ${nm} nm: ${(ours / value).toFixed(1)} times`];
    });
    expect(outside).toEqual([
      "IA 412 nm: 1.8 times",
      "1C 412 nm: 2.0 times",
      "3C 412 nm: 2.2 times",
      "3C 440 nm: 1.4 times",
    ]);
  });

  it("scales the particles and leaves the water alone", () => {
    const kd = jerlovKd("II");
    const [one, two] = [scatteringFromKd(kd), scatteringFromKd(kd, 2)];
    one.forEach((b, i) => {
      const pure = PURE_WATER_SCATTERING_PER_M[i];
      expect(two[i] - pure).toBeCloseTo(2 * (b - pure), 14);
    });
  });

  it("stays finite where a table lies at or below pure water", () => {
    const b = scatteringFromKd(spectrumFrom((_, i) => PURE_WATER_KD_PER_M[i] * 0.9));
    expect(b.every((v) => Number.isFinite(v) && v > 0)).toBe(true);
  });

  it("lies among Petzold 1972 at 530 nm: his stations' b/a of 0.3 to 10 spans what the types give", () => {
    const petzold = readTable("petzold_1972_stations_530nm").map(
      (row) => numberIn(row, "b_per_m") / numberIn(row, "a_per_m"),
    );
    for (const type of JERLOV_TYPES) {
      const water = waterFromKd(jerlovKd(type));
      const ratio = water.scattering_per_m[at(530)] / water.absorption_per_m[at(530)];
      expect(ratio).toBeGreaterThan(Math.min(...petzold));
      expect(ratio).toBeLessThan(Math.max(...petzold));
    }
  });
});
