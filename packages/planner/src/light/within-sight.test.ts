import { atNight, daylightScene, NIGHT_WRECK, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { integrateProduct, meanSensor, WAVELENGTHS_NM, Y_BAR } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import type { KitItem, Scene, TransmittanceSample } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { conditionsOf } from "./conditions.js";
import { requireLight } from "./require-light.js";
import { underwater } from "./underwater.js";

const harbour = daylightScene("9C", 45, 5);

function problemOf(scene: Scene, asked: (scene: Scene) => unknown = conditionsOf): SceneProblem {
  try {
    asked(scene);
  } catch (error) {
    if (error instanceof SceneProblem) return error;
    throw error;
  }
  throw new Error("no problem");
}
const curve = (at: (nm: number) => number): TransmittanceSample[] =>
  Array.from(WAVELENGTHS_NM, (wavelength_nm) => ({ wavelength_nm, transmittance: at(wavelength_nm) }));
const owning = (filter_transmittance: TransmittanceSample[]): KitItem[] => [
  { id: "a", item: "lens_filter", filter_kind: "red", filter_density: 0.6 },
  { id: "b", item: "lens_filter", filter_kind: "red", filter_transmittance },
];

describe("how far light reaches", () => {
  it("ends at an optical depth of 100 in the clearest colour that a camera sees, and the refusal names that depth", () => {
    const problem = problemOf({ ...harbour, max_depth_m: 1000 });
    if (problem.refusal.code !== "no_daylight_left") throw problem;
    const { depth_m, max_depth_m: limit_m } = problem.refusal.parameters;
    expect([depth_m, problem.field]).toEqual([1000, "max_depth_m"]);
    // By the attenuation that the type is described by, over 400 to 700 nm.
    const { kd_reference_per_m } = conditionsOf(harbour).water;
    const seen = kd_reference_per_m.filter((_, i) => WAVELENGTHS_NM[i] >= 400 && WAVELENGTHS_NM[i] <= 700);
    expect(limit_m * Math.min(...seen)).toBeCloseTo(100, 0);
    // And at its edge: a little less deep is taken.
    expect(() => conditionsOf({ ...harbour, max_depth_m: limit_m - 0.1 })).not.toThrow();
    expect(() => conditionsOf({ ...harbour, max_depth_m: limit_m + 0.1 })).toThrow(SceneProblem);
  });

  it("does not limit the depth of a dive on lamps", () => {
    expect(() => conditionsOf({ ...NIGHT_WRECK, water_type: "9C", max_depth_m: 1000 })).not.toThrow();
  });

  it.each([
    ["subject_distance_m", (distance_m: number): Scene => ({ ...harbour, subject_distance_m: distance_m })],
    [
      "lamps",
      (distance_m: number): Scene => ({ ...harbour, lamps: [TWO_LAMPS, { ...TWO_LAMPS, distance_m }] }),
    ],
  ] as const)("limits the path at %s likewise", (field, scene) => {
    const problem = problemOf(scene(900));
    if (problem.refusal.code !== "no_sight") throw problem;
    const { distance_m, max_distance_m: limit_m } = problem.refusal.parameters;
    expect([distance_m, problem.field]).toEqual([900, field]);
    const path = underwater(conditionsOf(harbour), NOMINAL).path_per_m;
    const seen = path.filter((_, i) => WAVELENGTHS_NM[i] >= 400 && WAVELENGTHS_NM[i] <= 700);
    expect(limit_m * Math.min(...seen)).toBeCloseTo(100, 0);
    expect(() => conditionsOf(scene(limit_m - 0.01))).not.toThrow();
  });
});

describe("a filter that lets nothing through", () => {
  const lightless = curve((nm) => (nm > 770 ? 0 : 1e-9));
  /** Just more, and just less, than a ten-millionth of the light. */
  const thin = curve(() => 1.1e-7);
  const thinner = curve(() => 0.9e-7);

  it("is refused on the lens and in a kit, by the field", () => {
    for (const dark of [lightless, thinner]) {
      const onLens = problemOf({ ...harbour, filter_transmittance: dark });
      expect(onLens.refusal).toEqual({ code: "filter_opaque", parameters: { case: "lens" } });
      expect(onLens.field).toBe("filter_transmittance");
      const inKit = problemOf({ ...harbour, kit: owning(dark) });
      expect(inKit.refusal).toEqual({ code: "filter_opaque", parameters: { case: "kit" } });
      expect([inKit.field, ...inKit.within]).toEqual(["kit", "1", "filter_transmittance"]);
    }
  });

  it("is taken where it lets a little through, as is a kit without curves", () => {
    expect(() => conditionsOf({ ...harbour, filter_transmittance: thin })).not.toThrow();
    expect(() => conditionsOf({ ...harbour, kit: owning(thin) })).not.toThrow();
    expect(() => conditionsOf({ ...harbour, kit: owning(thin).slice(0, 1) })).not.toThrow();
  });
});

describe("light to film by", () => {
  const asked = (scene: Scene) => requireLight(conditionsOf(scene));

  it("is daylight or a lamp: without both a scene is refused with what to change", () => {
    expect(() => asked(harbour)).not.toThrow();
    expect(() => asked(NIGHT_WRECK)).not.toThrow();
    const problem = problemOf(atNight(harbour), asked);
    expect(problem.refusal).toEqual({ code: "no_light", parameters: { case: "no_source" } });
    expect(problem.field).toBe("lamps");
  });

  it("must pass the lens filter where the camera sees, not only beside it", () => {
    const beside = curve((nm) => (nm > 730 ? 1 : 0));
    // Eyes see a little there, this sensor nothing.
    const sensor = meanSensor();
    const light = Float64Array.from(beside, ({ transmittance }) => transmittance);
    expect(integrateProduct(light, Y_BAR)).toBeGreaterThan(0);
    expect(integrateProduct(light, sensor.red)).toBe(0);
    const problem = problemOf({ ...harbour, filter_transmittance: beside }, asked);
    expect(problem.refusal).toEqual({
      code: "no_light",
      parameters: { case: "filter_passes_none", filter: "lens" },
    });
    expect(problem.field).toBe("filter_transmittance");
    expect(() => asked({ ...harbour, filter_transmittance: curve(() => 0.5) })).not.toThrow();
  });
});
