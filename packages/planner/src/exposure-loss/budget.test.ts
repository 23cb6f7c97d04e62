// Guards each step of the budget against what it stands for, worked out apart from the others.

import { atNight, daylightScene, NIGHT_WRECK, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { numberIn, readTable } from "@sunfathom/fixtures/tables";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import { lensFilterOf } from "../light/lens-filter.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { budgetAt } from "./budget.js";

const of = (scene: Scene, depth_m = scene.max_depth_m) =>
  budgetAt(underwater(conditionsOf(scene), NOMINAL), lensFilterOf(scene, NOMINAL), depth_m);
/** A flat measured filter that lets a share through. */
const flat = (transmittance: number) => [400, 700].map((wavelength_nm) => ({ wavelength_nm, transmittance }));
const REEF = daylightScene("IB", 45, 8);
const contrastLeft = (scene: Scene) => 2 ** -of(scene).contrast;

describe("the budget by day", () => {
  it("adds up to the whole, from above the surface to the sensor, with or without a filter", () => {
    for (const change of [{}, { filter_kind: "red", filter_density: 0.6 } as const]) {
      const { surface, depth, upright, distance, port, lensFilter, total } = of({ ...REEF, ...change });
      expect(surface + depth + upright + distance + port + lensFilter).toBeCloseTo(total, 9);
    }
  });

  it("loses some 2 % of a high sun at the surface, and more of a low one (Fresnel: 2 % straight down, a third at 10 degrees)", () => {
    const passes = (sun: number) => 2 ** -of(daylightScene("IB", sun, 8)).surface;
    expect(passes(85)).toBeGreaterThan(0.94);
    expect(passes(85)).toBeLessThan(0.99);
    expect(passes(10)).toBeLessThan(0.85);
  });

  it("loses nothing of the way down where there is no way, and twice as far down about twice as much (Beer)", () => {
    expect(of(REEF, 0).depth).toBeCloseTo(0, 12);
    const [once, twice] = [of(REEF, 10).depth, of(REEF, 20).depth];
    expect(once).toBeGreaterThan(0.5);
    // A little less: what is left is ever more of the light that the water lets through.
    expect(twice / once).toBeGreaterThan(1.5);
    expect(twice / once).toBeLessThan(2);
  });

  it("gives a dome that faces up half of what comes from all around too, more than a level surface gets (exact)", () => {
    const up = of({ ...REEF, subject_facing: "up" }).upright;
    expect(up).toBeLessThan(0);
    expect(up).toBeGreaterThan(-0.5);
    expect(of(REEF).upright).toBeGreaterThan(0);
  });

  it("has no scene level in the dark, and by day that of a grey subject alone where nothing else is in the picture", () => {
    expect(of(NIGHT_WRECK).sceneEv100).toBe(0);
    // In the clearest water open water is darker than a subject with the sun behind the camera, over sand the floor is brighter.
    const clear: Scene = { ...daylightScene("I", 60, 3), sun_side: "behind_camera" };
    const deep = of(clear, 3);
    const sand = of({ ...clear, bottom: "sand", bottom_depth_m: 4 }, 3);
    expect(deep.sceneEv100).toBeLessThan(deep.ev100);
    expect(sand.sceneEv100 - sand.ev100).toBeGreaterThan(deep.sceneEv100 - deep.ev100 + 0.3);
  });

  it("loses nothing on no distance, and all of the way towards the camera is counted with its length", () => {
    expect(of({ ...REEF, subject_distance_m: 1e-9 }).distance).toBeCloseTo(0, 6);
    const [near, far] = [1, 2].map((subject_distance_m) => of({ ...REEF, subject_distance_m }).distance);
    expect(far / near).toBeGreaterThan(1.9);
    expect(far / near).toBeLessThanOrEqual(2);
  });

  it("loses what a flat filter holds back, to the last stop, and no subject is the darker for it", () => {
    const bare = of(REEF);
    const quarter = of({ ...REEF, filter_kind: "neutral", filter_transmittance: flat(0.25) });
    expect(quarter.lensFilter).toBeCloseTo(2, 12);
    expect(quarter.ev100).toBeCloseTo(bare.ev100 - 2, 12);
    expect(quarter.total).toBeCloseTo(bare.total + 2, 12);
    expect(quarter.log2SubjectLux).toBe(bare.log2SubjectLux);
  });

  it("asks for the exposure of an incident meter, less what distance, port and filter take (ISO 2720: E = 3.4 lx times 2 to the EV, with C of 340 for a dome)", () => {
    const { ev100, log2SubjectLux, distance, port, lensFilter } = of(REEF);
    expect(3.4 * 2 ** (ev100 + distance + port + lensFilter)).toBeCloseTo(2 ** log2SubjectLux, 6);
  });

  it("counts lamps as light on the subject, and not as daylight that came down", () => {
    const bare = of(REEF);
    const lit = of({ ...REEF, lamps: [TWO_LAMPS] });
    const lamps = of({ ...atNight(REEF), lamps: [TWO_LAMPS] });
    expect(2 ** lit.log2SubjectLux).toBeCloseTo(2 ** bare.log2SubjectLux + 2 ** lamps.log2SubjectLux, 6);
    for (const part of ["surface", "depth", "upright", "total"] as const) {
      expect(lit[part]).toBeCloseTo(bare[part], 12);
    }
  });
});

describe("the budget by night", () => {
  it("has lost nothing of a daylight that is not there", () => {
    const { surface, depth, upright, total } = of(NIGHT_WRECK);
    expect([surface, depth, upright, total]).toEqual([0, 0, 0, 0]);
  });

  it("loses what a flat filter on the lamps holds back; no lamp, no loss", () => {
    const lit = (change: object) => of({ ...NIGHT_WRECK, lamps: [{ ...TWO_LAMPS, ...change }] });
    const half = lit({ filter_kind: "blue", filter_transmittance: flat(0.5) });
    expect(lit({}).lampFilter).toBe(0);
    expect(half.lampFilter).toBeCloseTo(1, 12);
    expect(half.log2SubjectLux).toBeCloseTo(lit({}).log2SubjectLux - 1, 12);
    expect(of(REEF).lampFilter).toBe(0);
  });
});

describe("contrast that is left", () => {
  it("is exp(-c r), weighted by what the eye sees of the light (Duntley 1963): 555 nm stands for it within a tenth", () => {
    // V peaks at 555 nm (CIE 1924); the light on the subject in green water is centred there.
    const V = readTable("cie_luminous_efficiency_1nm").find((row) => numberIn(row, "wavelength_nm") === 555);
    if (!V) throw new Error("no row at 555 nm");
    expect(numberIn(V, "V_photopic_1924")).toBeCloseTo(1, 3);
    for (const [type, r] of [
      ["IB", 3],
      ["1C", 1],
      ["3C", 0.5],
    ] as const) {
      const scene = { ...daylightScene(type, 50, 8), subject_distance_m: r };
      const c = underwater(conditionsOf(scene), NOMINAL).water.beam_attenuation_per_m[(555 - 380) / 5];
      expect(contrastLeft(scene) / Math.exp(-c * r)).toBeGreaterThan(0.9);
      expect(contrastLeft(scene) / Math.exp(-c * r)).toBeLessThan(1.1);
    }
  });

  it("at the distance at which a black disc vanishes is exp(-4.8) = 0.8 % at 530 nm (Davies-Colley 1988), and Beer's law holds on the way", () => {
    const { water_type: _, ...scene } = daylightScene("", 50, 8);
    const left = (subject_distance_m: number) =>
      contrastLeft({ ...scene, visibility_m: 10, water_hue: "blue_green", subject_distance_m });
    expect(left(10)).toBeGreaterThan(0.004);
    expect(left(10)).toBeLessThan(0.02);
    // Beer's law: twice the way squares it, up to what the spectrum changes on the way.
    expect(Math.log(left(4)) / Math.log(left(2))).toBeCloseTo(2, 1);
  });
});
