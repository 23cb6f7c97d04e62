import { TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import {
  CLEAR,
  filterTransmittance,
  GRID_SIZE,
  integrateProduct,
  LED_NAMES,
  type Spectrum,
  WAVELENGTHS_NM,
  Y_BAR,
} from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import type { Lamp } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { lampFilter, lampIntensity_cd, lampSpectrum, lampsAtPort, lampsIrradiance } from "./lamps.js";

const { cct_K: _, ...unnamed } = TWO_LAMPS;
const even = (value: number): Spectrum => new Float64Array(GRID_SIZE).fill(value);
const air = {
  intensityScale: 1,
  attenuation_per_m: even(0),
  aim: { aimOff_deg: 0, subjectRadius_m: 0 },
};
/** Of I0 cos^m with half of I0 at the edge (CIE e-ILV 17-27-077), over the hemisphere. */
const middle_cd = (flux_lm: number, half: number): number =>
  (flux_lm * (Math.log(0.5) / Math.log(Math.cos(half)) + 1)) / (2 * Math.PI);
/** Lux of a spectrum in W m^-2 nm^-1, or lumens of one in W nm^-1: 683 lm/W (CIE 18). */
const photometric = (spectrum: Spectrum): number => 683.002 * integrateProduct(spectrum, Y_BAR);

describe("a lamp's light", () => {
  it.each([TWO_LAMPS, { ...unnamed, led: LED_NAMES[0] }])("is counted per lumen: %o", (lamp) => {
    expect(photometric(lampSpectrum(lamp))).toBeCloseTo(1, 4);
  });

  it("is that of the LED that is named: each has its own", () => {
    const [one, other] = LED_NAMES.map((led) => lampSpectrum({ ...unnamed, led }));
    expect(one).not.toEqual(other);
  });

  it.each([{ ...unnamed, led: "candle" }, { ...TWO_LAMPS, led: "candle" }, unnamed])(
    "is refused where no source is known: %o",
    (lamp) => {
      let problem: unknown;
      try {
        lampSpectrum(lamp);
      } catch (error) {
        problem = error;
      }
      expect(problem).toBeInstanceOf(SceneProblem);
      expect(problem).toMatchObject({
        refusal: { code: "lamp_unknown", parameters: { leds: LED_NAMES } },
        field: "lamps",
      });
    },
  );

  it("spreads its flux over its beam, half of the middle's intensity at the edge, of all lamps of the entry", () => {
    expect(lampIntensity_cd(TWO_LAMPS)).toBeCloseTo(middle_cd(8000, (50 * Math.PI) / 180), 6);
    // 100 degrees in air are 2 asin(sin 50 / 1.34) in water (Snell).
    const half = Math.asin(Math.sin((50 * Math.PI) / 180) / 1.34);
    expect(lampIntensity_cd({ ...TWO_LAMPS, beam_angle_medium: "air" })).toBeCloseTo(
      middle_cd(8000, half),
      6,
    );
  });
});

describe("a lamp's filter", () => {
  const samples = Array.from(WAVELENGTHS_NM, (wavelength_nm) => ({ wavelength_nm, transmittance: 0.4 }));

  it("is clear where none is mounted, or none that is described", () => {
    expect(lampFilter(TWO_LAMPS)).toEqual(CLEAR);
    expect(lampFilter({ ...TWO_LAMPS, filter_kind: "blue" })).toEqual(CLEAR);
    expect(lampFilter({ ...TWO_LAMPS, filter_density: 0.6 })).toEqual(CLEAR);
  });

  it("has the shape of its kind and density, none too: or the measured curve before both", () => {
    const blue: Lamp = { ...TWO_LAMPS, filter_kind: "blue", filter_density: 0.6 };
    expect(lampFilter(blue)).toEqual(filterTransmittance("blue", 0.6));
    expect(lampFilter({ ...blue, filter_density: 0 })).toEqual(filterTransmittance("blue", 0));
    lampFilter({ ...blue, filter_transmittance: samples }).forEach((t) => {
      expect(t).toBeCloseTo(0.4, 12);
    });
  });
});

describe("the light of lamps on a subject", () => {
  const lux = (lamps: readonly Lamp[], change = {}): number =>
    photometric(lampsIrradiance(lamps, { ...air, ...change }));

  it("is intensity over squared distance without water (inverse square law), and adds up", () => {
    const one = lampIntensity_cd(TWO_LAMPS) / 0.8 ** 2;
    expect(lux([TWO_LAMPS]) / one).toBeCloseTo(1, 4);
    const far: Lamp = { ...TWO_LAMPS, distance_m: 1.6, cct_K: 3000 };
    expect(lux([TWO_LAMPS, far]) / (1.25 * one)).toBeCloseTo(1, 4);
    expect(lux([])).toBe(0);
  });

  it("falls in water by exp(-c r), and is as bright as its beams are taken to be", () => {
    const attenuation_per_m = even(0.5);
    expect(lux([TWO_LAMPS], { attenuation_per_m }) / lux([TWO_LAMPS])).toBeCloseTo(Math.exp(-0.4), 10);
    expect(lux([TWO_LAMPS], { intensityScale: 1.5 }) / lux([TWO_LAMPS])).toBeCloseTo(1.5, 10);
  });

  it("passes each lamp's own filter, or the one that is tried in its place", () => {
    const blue: Lamp = { ...TWO_LAMPS, filter_kind: "blue", filter_density: 0.6 };
    const clear = lampsIrradiance([TWO_LAMPS], air);
    lampsIrradiance([blue], air).forEach((e, i) => {
      expect(e).toBeCloseTo(clear[i] * filterTransmittance("blue", 0.6)[i], 12);
    });
    expect(lampsIrradiance([blue], { ...air, filter: CLEAR })).toEqual(clear);
  });

  it("comes from each lamp's own distance, or the one that is tried in its place", () => {
    expect(lux([TWO_LAMPS], { distance_m: 1.6 }) / lux([TWO_LAMPS])).toBeCloseTo(1 / 4, 10);
  });

  it("is less on a large subject and beside the beam, and half at the beam's edge (CIE e-ILV 17-27-077)", () => {
    const aimed = (aimOff_deg: number, subjectRadius_m: number) =>
      lux([TWO_LAMPS], { aim: { aimOff_deg, subjectRadius_m } }) / lux([TWO_LAMPS]);
    expect(aimed(50, 0)).toBeCloseTo(0.5, 6);
    expect(aimed(0, 0.3)).toBeLessThan(1);
    expect(aimed(10, 0.3)).toBeLessThan(aimed(0, 0.3));
  });

  it("at the ports is mixed by intensity, behind each lamp's filter", () => {
    const blue: Lamp = { ...TWO_LAMPS, count: 1, cct_K: 3000, filter_kind: "blue", filter_density: 0.6 };
    const at1m = [TWO_LAMPS, blue].map((lamp) => ({ ...lamp, distance_m: 1 }));
    const onSubject = lampsIrradiance(at1m, air);
    lampsAtPort([TWO_LAMPS, blue]).forEach((e, i) => {
      expect(e).toBeCloseTo(onSubject[i], 12);
    });
  });
});
