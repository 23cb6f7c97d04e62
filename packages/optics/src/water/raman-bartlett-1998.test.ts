import { describe, expect, it } from "vitest";
import { GRID_SIZE, WAVELENGTHS_NM } from "../spectrum/grid.js";
import { jerlovKd } from "./jerlov-1976.js";
import { excitation_nm, ramanDownwelling, ramanScattering_per_m } from "./raman-bartlett-1998.js";

const flat = new Float64Array(GRID_SIZE).fill(1);
const at = (nm: number) => WAVELENGTHS_NM.indexOf(nm);

describe("inelastic scattering after Bartlett et al. 1998 (Applied Optics 37, 3324, abstract)", () => {
  it("has the published coefficient at 488 nm and the published power", () => {
    expect(ramanScattering_per_m(488)).toBeCloseTo(2.7e-4, 9);
    expect(ramanScattering_per_m(244) / ramanScattering_per_m(488)).toBeCloseTo(2 ** 5.5, 9);
  });

  it("shifts by 3400 per cm: 488 nm to about 585 nm", () => {
    expect(excitation_nm(585)).toBeCloseTo(488, 0);
  });

  it("makes no light at the surface, more with depth at first, and overtakes transmitted red in the clearest water near 20 m", () => {
    const kd = jerlovKd("I");
    const made = (z: number) => ramanDownwelling(flat, kd, z)[at(650)];
    const transmitted = (z: number) => Math.exp(-kd[at(650)] * z);
    expect(made(0)).toBe(0);
    expect(made(2)).toBeGreaterThan(made(1));
    // "Roughly 20 m in the clearest water", from memory of the literature on inelastic light in clear ocean water.
    expect(made(15)).toBeLessThan(transmitted(15));
    expect(made(30)).toBeGreaterThan(transmitted(30));
  });

  it("agrees with a numerical integration of its own equation", () => {
    const kd = jerlovKd("II");
    const i = at(620);
    const from = excitation_nm(620);
    const k = kd[at(510)] + ((kd[at(515)] - kd[at(510)]) * (from - 510)) / 5;
    const step = 1e-3;
    let light = 0;
    for (let z = 0; z < 8; z += step) {
      const source =
        (ramanScattering_per_m(from) / 2) * 1.2 * Math.exp(-k * (z + step / 2)) * (from / 620) ** 2;
      light += (source - kd[i] * light) * step;
    }
    expect(ramanDownwelling(flat, kd, 8)[i] / light).toBeCloseTo(1, 3);
  });

  // With one attenuation k for both, dE/dz = s exp(-k z) - k E has the solution s z exp(-k z).
  it("has its limit where excitation and emission fade alike", () => {
    for (const [k, z] of [
      [0.05, 12],
      [0.4, 3],
    ]) {
      const from = excitation_nm(600);
      const source = (ramanScattering_per_m(from) / 2) * 1.2 * (from / 600) ** 2;
      const alike = ramanDownwelling(
        flat,
        flat.map(() => k),
        z,
      )[at(600)];
      expect(alike).toBeCloseTo(source * z * Math.exp(-k * z), 12);
      const nearly = flat.map((_, i) => (i < at(560) ? k : k * 1.0001));
      expect(ramanDownwelling(flat, nearly, z)[at(600)] / alike).toBeCloseTo(1, 3);
    }
  });

  it("is none where what excites it lies below the grid", () => {
    const made = ramanDownwelling(flat, jerlovKd("I"), 5);
    made.forEach((e, i) => {
      if (excitation_nm(WAVELENGTHS_NM[i]) < 380) expect(e).toBe(0);
      else expect(e).toBeGreaterThan(0);
    });
    expect(made[0]).toBe(0);
  });
});
