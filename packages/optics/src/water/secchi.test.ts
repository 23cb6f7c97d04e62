import { describe, expect, it } from "vitest";
import { ASTM_G173_03 } from "../data/astm-g173-03.js";
import { WAVELENGTHS_NM } from "../spectrum/grid.js";
import { familyKd } from "./hue-family.js";
import { JERLOV_TYPES, jerlovKd } from "./jerlov-1976.js";
import { PURE_WATER_SCATTERING_PER_M } from "./pure-water.js";
import {
  classicalSecchiDepth_m,
  clearestIndex,
  leeSecchiDepth_m,
  pooleAtkinsKdPar_per_m,
  secchiDepth_m,
} from "./secchi.js";
import { emptyWater, waterFromKd } from "./water-optics.js";

const GREEN = WAVELENGTHS_NM.indexOf(550);

/** Diffuse attenuation of quanta, 400 to 700 nm, from the surface to a depth. */
function kdPar(kd: Float64Array, depth_m: number): number {
  let top = 0;
  let below = 0;
  WAVELENGTHS_NM.forEach((nm, i) => {
    if (nm < 400 || nm > 700) return;
    const quanta = ASTM_G173_03.global_tilt37_W_m2_nm[i] * nm;
    top += quanta;
    below += quanta * Math.exp(-kd[i] * depth_m);
  });
  return Math.log(top / below) / depth_m;
}

describe("Secchi depth", () => {
  it("follows the published equation: ln(|0.14 - 0.004| / 0.013) / (2.5 * 0.05) by hand", () => {
    // ln(0.136 / 0.013) = 2.3477; over 0.125 per m.
    expect(leeSecchiDepth_m(0.05, 0.004)).toBeCloseTo(18.78, 2);
  });

  it("finds the clearest wavelength between 443 and 665 nm", () => {
    expect(WAVELENGTHS_NM[clearestIndex(jerlovKd("IB"))]).toBe(475);
    expect(WAVELENGTHS_NM[clearestIndex(jerlovKd("3C"))]).toBe(545);
  });

  it("falls from type to type", () => {
    const oceanic = ["I", "IA", "IB", "II", "III"] as const;
    const coastal = ["1C", "3C", "5C", "7C", "9C"] as const;
    for (const row of [oceanic, coastal]) {
      const depths = row.map((type) => secchiDepth_m(waterFromKd(jerlovKd(type))));
      for (let k = 1; k < depths.length; k++) expect(depths[k]).toBeLessThan(depths[k - 1]);
    }
  });

  it("lets the clearest water there can be show the record of the Weddell Sea, about 80 m, and not much more", () => {
    // Gieskes, Veth, Woehrmann & Graefe 1987, Secchi disc visibility world record shattered, Eos 68, 123; depth from memory.
    const clearest = secchiDepth_m(waterFromKd(familyKd(5e-4, 0)));
    expect(clearest).toBeGreaterThan(80);
    expect(clearest).toBeLessThan(95);
  });

  it("agrees with Poole & Atkins 1929 within the spread of their constant, in every type", () => {
    // Kd(PAR) Z = 1.7; later work finds 1.4 to above 2. Lee's 18 % mean difference comes on top: 1.4 * 0.82 to 2.2 * 1.18.
    for (const type of JERLOV_TYPES) {
      const depth = secchiDepth_m(waterFromKd(jerlovKd(type)));
      const ratio = kdPar(jerlovKd(type), depth) / pooleAtkinsKdPar_per_m(depth);
      expect(ratio * 1.7, type).toBeGreaterThan(1.14);
      expect(ratio * 1.7, type).toBeLessThan(2.6);
    }
  });

  it("agrees with the classical theory within the factor of two by which scattering per type is uncertain", () => {
    for (const type of JERLOV_TYPES) {
      const water = waterFromKd(jerlovKd(type));
      const classical = classicalSecchiDepth_m(
        water.beam_attenuation_per_m[GREEN],
        water.kd_reference_per_m[GREEN],
      );
      expect(Math.abs(Math.log(classical / secchiDepth_m(water))), type).toBeLessThan(Math.log(2));
    }
  });

  // Lee, Carder & Arnone 2002, Applied Optics 41, 5755 (from memory): r = 0.089 u + 0.1245 u^2 with u = bb / (a + bb), and through the
  // surface R = 0.52 r / (1 - 1.7 r). Backscattered: half of pure water's scattering, 1.8 % of particles'.
  it.each([0, 0.4, 2])(
    "takes the light that comes back off the disc's contrast, with %d per m of particles",
    (particles) => {
      const water = emptyWater();
      water.kd_reference_per_m.fill(0.3);
      water.absorption_per_m.fill(0.05);
      const i = clearestIndex(water.kd_reference_per_m);
      const pure = PURE_WATER_SCATTERING_PER_M[i];
      water.scattering_per_m.fill(pure + particles);
      const bb = pure / 2 + 0.018 * particles;
      const u = bb / (0.05 + bb);
      const r = 0.089 * u + 0.1245 * u ** 2;
      const R = (0.52 * r) / (1 - 1.7 * r);
      expect(R).toBeGreaterThan(particles > 0 ? 0.005 : 0.0005);
      expect(secchiDepth_m(water)).toBeCloseTo(Math.log((0.14 - R) / 0.013) / (2.5 * 0.3), 10);
    },
  );

  it("does not take particles for less than none", () => {
    const [none, less] = [1, 0.5].map((share) => {
      const water = emptyWater();
      water.kd_reference_per_m.fill(0.3);
      water.absorption_per_m.fill(0.05);
      water.scattering_per_m.set(PURE_WATER_SCATTERING_PER_M.map((b) => share * b));
      return secchiDepth_m(water);
    });
    expect(less).toBe(none);
  });
});
