import { describe, expect, it } from "vitest";
import { ASTM_G173_03 } from "../data/astm-g173-03.js";
import { CIE_1931_OBSERVER } from "../data/cie-1931-observer.js";
import { WAVELENGTHS_NM } from "../spectrum/grid.js";
import { CLARITY_RANGES, hueMixOf, kdForClarity, WATER_HUES, type WaterHue } from "./water-hue.js";
import { waterFromKd } from "./water-optics.js";

const { x_bar, y_bar, z_bar } = CIE_1931_OBSERVER;

/**
 * Dominant wavelength, nm, against equal energy, of open water seen horizontally just below the surface: daylight
 * (ASTM G173) times scattering over beam attenuation.
 */
function dominantWavelength_nm(kd: Float64Array): number {
  const water = waterFromKd(kd);
  let X = 0;
  let Y = 0;
  let Z = 0;
  for (let i = 0; i < WAVELENGTHS_NM.length; i++) {
    const light =
      (ASTM_G173_03.global_tilt37_W_m2_nm[i] * water.scattering_per_m[i]) / water.beam_attenuation_per_m[i];
    X += light * x_bar[i];
    Y += light * y_bar[i];
    Z += light * z_bar[i];
  }
  const angle = (x: number, y: number, z: number): number =>
    Math.atan2(y / (x + y + z) - 1 / 3, x / (x + y + z) - 1 / 3);
  const wanted = angle(X, Y, Z);
  // From the blue end to yellow the locus turns clockwise, from -120 degrees over the left to +45: measured from its blue end.
  const turn = (a: number): number => (angle(x_bar[8], y_bar[8], z_bar[8]) - a + 4 * Math.PI) % (2 * Math.PI);
  for (let i = 8; i < 50; i++) {
    const a = turn(angle(x_bar[i], y_bar[i], z_bar[i]));
    const b = turn(angle(x_bar[i + 1], y_bar[i + 1], z_bar[i + 1]));
    if (turn(wanted) >= a && turn(wanted) <= b) return WAVELENGTHS_NM[i] + (5 * (turn(wanted) - a)) / (b - a);
  }
  return Number.NaN;
}

const edges = (hue: WaterHue): [number, number] => {
  const [least_m, most_m] = CLARITY_RANGES.secchi_depth_m[hue];
  const at = (depth_m: number): number =>
    dominantWavelength_nm(kdForClarity("secchi_depth_m", depth_m, hueMixOf(hue)));
  return [at(most_m), at(least_m)];
};

describe("words for the colour of water", () => {
  it.each<[WaterHue, number, number]>([
    ["blue", 470, 497],
    ["blue_green", 487, 525],
    ["green", 492, 572],
    ["brown", 545, 580],
  ])(
    "%s water looks it: dominant wavelength between %s and %s nm over its whole stretch",
    (hue, from_nm, to_nm) => {
      const [clear, murky] = edges(hue);
      expect(clear).toBeGreaterThan(from_nm);
      expect(murky).toBeGreaterThan(clear);
      expect(murky).toBeLessThan(to_nm);
    },
  );

  it("lets every hue overlap with its neighbour, so that no distance falls between two words", () => {
    for (const clarity of ["secchi_depth_m", "visibility_m"] as const) {
      for (let k = 1; k < WATER_HUES.length; k++) {
        const clearer = CLARITY_RANGES[clarity][WATER_HUES[k - 1]];
        const murkier = CLARITY_RANGES[clarity][WATER_HUES[k]];
        expect(murkier[1]).toBeGreaterThan(clearer[0]);
        expect(murkier[0]).toBeLessThan(clearer[0]);
      }
    }
  });
});
