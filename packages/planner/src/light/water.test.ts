import { atNight, daylightScene, TWO_LAMPS, withKd } from "@sunfathom/fixtures/scenes";
import { integrateProduct, jerlovKd, kdFromChlorophyll, meanSensor } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import type { CardSample, Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { conditionsOf } from "./conditions.js";
import { downwellingAt, underwater } from "./underwater.js";

const scene = daylightScene("II", 45, 5);
const { water_type: _, ...withoutWater } = scene;
const waterOf = (basis: Partial<Scene>) => conditionsOf({ ...withoutWater, ...basis }).water;

function problemOf(basis: Partial<Scene>): SceneProblem {
  try {
    waterOf(basis);
  } catch (error) {
    if (error instanceof SceneProblem) return error;
    throw error;
  }
  throw new Error("no problem");
}

describe("a described water", () => {
  it("has the attenuation that its description stands for, and names where that is from", () => {
    const byType = waterOf({ water_type: "II" });
    expect(byType.kd_reference_per_m).toEqual(jerlovKd("II"));
    expect(byType.sources).toEqual(["jerlov_1976", "pope_fry_1997"]);
    const byPigment = waterOf({ chlorophyll_mg_m3: 0.3 });
    expect(byPigment.kd_reference_per_m).toEqual(kdFromChlorophyll(0.3));
    expect(byPigment.sources).toEqual(["morel_maritorena_2001", "pope_fry_1997"]);
    // Measured at two wavelengths: kept there, whatever lies between.
    const measured = conditionsOf(
      withKd(scene, [
        { wavelength_nm: 490, kd_per_m: 0.06 },
        { wavelength_nm: 600, kd_per_m: 0.27 },
      ]),
    ).water;
    expect(measured.kd_reference_per_m[(490 - 380) / 5]).toBeCloseTo(0.06, 12);
    expect(measured.kd_reference_per_m[(600 - 380) / 5]).toBeCloseTo(0.27, 12);
    expect(measured.sources).toEqual(["pope_fry_1997"]);
    expect(measured.remainder_sigmas).toEqual([{ cause: "kd_measurement", sigma_ln: 0.05 }]);
    expect(measured.scattering_sigmas.map(({ cause }) => cause)).toEqual(["scattering_per_water"]);
  });

  it.each([
    ["secchi_depth_m", "lee_2015"],
    ["visibility_m", "visibility_contrast"],
  ] as const)("by %s is clearer the farther one sees; without a hue it is none", (field, source) => {
    const [murky, clear] = [8, 15].map((seen_m) => waterOf({ [field]: seen_m, water_hue: "blue_green" }));
    expect(murky.kd_reference_per_m[22]).toBeGreaterThan(clear.kd_reference_per_m[22]);
    expect(murky.sources).toEqual([source, "water_family", "jerlov_1976", "pope_fry_1997"]);
    expect(problemOf({ [field]: 8 }).code).toBe("water_missing");
  });

  it("scatters as much as explains the visibility that was seen: 4.8 / c near 530 nm (Zaneveld & Pegau 2003)", () => {
    const seen = conditionsOf({ ...withoutWater, visibility_m: 12, water_hue: "blue_green" });
    const c = underwater(seen, NOMINAL).water.beam_attenuation_per_m[(530 - 380) / 5];
    expect(c * 12).toBeCloseTo(4.8, 6);
    expect(seen.water.scatteringScale).not.toBe(1);
    expect(waterOf({ water_type: "II" }).scatteringScale).toBe(1);
  });

  it("that is unknown is refused with what could be given", () => {
    const problem = problemOf({ water_type: "4C" });
    const fields = [
      "water_type",
      "chlorophyll_mg_m3",
      "secchi_depth_m",
      "visibility_m",
      "kd_samples",
      "card_samples",
    ];
    expect(problem.refusal).toEqual({ code: "water_missing", parameters: { fields } });
    expect(problem.field).toBe("water_type");
  });

  it("outside what nature shows is refused by its field, with what optics says", () => {
    const problem = problemOf({ chlorophyll_mg_m3: 500 });
    expect(problem.refusal).toEqual({
      code: "chlorophyll_out_of_range",
      parameters: { chlorophyll_mg_m3: 500, min_mg_m3: 0.02, max_mg_m3: 20 },
    });
    expect(problem.field).toBe("chlorophyll_mg_m3");
  });
});

describe("a water that a grey card saw", () => {
  const sensor = meanSensor();
  const world = underwater(conditionsOf(scene), NOMINAL);
  const depths = [3, 7, 11, 15];
  const seen = depths.map((depth_m) =>
    ([sensor.red, sensor.green, sensor.blue] as const).map((channel) =>
      integrateProduct(downwellingAt(world, depth_m), channel),
    ),
  );
  const [[, greenAtTop]] = seen;
  /** Cards at one exposure and one balance, brightest at half of the scale. */
  const locked: CardSample[] = seen.map(([red, green, blue], n) => ({
    depth_m: depths[n],
    red: (0.5 * red) / greenAtTop / 2,
    green: (0.5 * green) / greenAtTop / 2,
    blue: (0.5 * blue) / greenAtTop / 2,
  }));
  const fitted = (card_samples: CardSample[], more: Partial<Scene> = {}) =>
    waterOf({ card_samples, locked_exposure: true, locked_balance: true, ...more });

  it("attenuates as the one that it was photographed in, within 10 % where a camera sees best", () => {
    const water = fitted(locked);
    const { kd_reference_per_m } = conditionsOf(scene).water;
    for (const nm of [450, 500, 550, 600]) {
      const i = (nm - 380) / 5;
      expect(Math.abs(water.kd_reference_per_m[i] / kd_reference_per_m[i] - 1), `${nm} nm`).toBeLessThan(0.1);
    }
    expect(water.cardFit?.rms_residual_ln).toBeLessThan(0.02);
    expect(water.sources[0]).toBe("card_fit");
  });

  it("is the same water under a low sun, whose longer path is told apart from what the water takes", () => {
    const low = daylightScene("II", 15, 5);
    const lowWorld = underwater(conditionsOf(low), NOMINAL);
    const cards = depths.map((depth_m): CardSample => {
      const light = downwellingAt(lowWorld, depth_m);
      const [red, green, blue] = [sensor.red, sensor.green, sensor.blue].map(
        (channel) =>
          integrateProduct(light, channel) / integrateProduct(downwellingAt(lowWorld, 3), sensor.green) / 4,
      );
      return { depth_m, red, green, blue };
    });
    const { water_type: _type, ...lowScene } = low;
    const { water } = conditionsOf({
      ...lowScene,
      card_samples: cards,
      locked_exposure: true,
      locked_balance: true,
    });
    const high = fitted(locked).kd_reference_per_m;
    for (const nm of [450, 500, 550]) {
      const i = (nm - 380) / 5;
      expect(Math.abs(water.kd_reference_per_m[i] / high[i] - 1), `${nm} nm`).toBeLessThan(0.03);
    }
  });

  it("is the same from other exposures and gains, where each picture says its own", () => {
    const told = locked.map((sample, n): CardSample => {
      const [lifted, gain] = [2 ** (n / 2), 1 + n / 10];
      return {
        depth_m: sample.depth_m,
        red: sample.red * lifted * gain,
        green: sample.green * lifted,
        blue: sample.blue * lifted,
        iso: 200 * lifted,
        shutter_s: 1 / 60,
        f_number: 4,
        red_gain: gain,
        green_gain: 1,
        blue_gain: 1,
      };
    });
    const one = fitted(locked).kd_reference_per_m;
    waterOf({ card_samples: told }).kd_reference_per_m.forEach((kd, i) => {
      expect(kd).toBeCloseTo(one[i], 6);
    });
    // Half-told is not told.
    for (const missing of ["iso", "shutter_s", "f_number", "red_gain", "green_gain", "blue_gain"] as const) {
      const halfTold = told.map(({ [missing]: _left, ...sample }) => sample);
      const other = (): unknown => waterOf({ card_samples: halfTold }).cardFit?.channel_kd;
      if (missing.endsWith("gain")) expect(other).toThrow(SceneProblem);
      else expect(other()).toBeUndefined();
    }
  });

  it("is read through the curve by which the picture was stored: BT.709, 4.5 L below 0.018 and 1.099 L^0.45 - 0.099 above", () => {
    const store = (light: number): number => (light < 0.018 ? 4.5 * light : 1.099 * light ** 0.45 - 0.099);
    const stored = locked.map(({ depth_m, red, green, blue }): CardSample => {
      return { depth_m, red: store(red), green: store(green), blue: store(blue) };
    });
    const one = fitted(locked).kd_reference_per_m;
    fitted(stored, { transfer_curve: "rec709" }).kd_reference_per_m.forEach((kd, i) => {
      expect(kd).toBeCloseTo(one[i], 5);
    });
  });

  it("is fitted under daylight of 5500 K where no sun is known", () => {
    const night = {
      ...atNight({ ...withoutWater, card_samples: locked, locked_exposure: true, locked_balance: true }),
    };
    const { water } = conditionsOf({ ...night, lamps: [TWO_LAMPS] });
    expect(water.cardFit).toBeDefined();
    expect(water.kd_reference_per_m).not.toEqual(fitted(locked).kd_reference_per_m);
    const i = (500 - 380) / 5;
    expect(Math.abs(water.kd_reference_per_m[i] / jerlovKd("II")[i] - 1)).toBeLessThan(0.3);
  });

  it("that fades nowhere is refused, at the samples", () => {
    const still = depths.map((depth_m): CardSample => ({ ...locked[0], depth_m }));
    const problem = problemOf({ card_samples: still, locked_exposure: true, locked_balance: true });
    expect(problem.code).toMatch(/^card_samples_/);
    expect(problem.field).toBe("card_samples");
  });
});
