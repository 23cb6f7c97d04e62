import { atNight, daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { illuminance_lx, type Spectrum } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import type { Scene } from "../scene/scene.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { conditionsOf } from "./conditions.js";
import { cardDaylightAt, levelDaylightAt, openWaterAt, subjectDaylightAt } from "./daylight-at-depth.js";
import { downwellingAt, underwater } from "./underwater.js";

const reef: Scene = { ...daylightScene("IB", 45, 7), sun_side: "unknown" };
const worldOf = (scene: Scene, change: Partial<Nuisance> = {}) =>
  underwater(conditionsOf(scene), { ...NOMINAL, ...change });
const behind: Scene = { ...reef, sun_side: "behind_camera" };
const sand = { bottom: "sand", bottom_depth_m: 9 } as const;
type At = (world: ReturnType<typeof worldOf>, depth_m: number) => Spectrum;
const lux = (at: At, scene: Scene, change: Partial<Nuisance> = {}) =>
  illuminance_lx(at(worldOf(scene, change), 7));

describe("daylight on the subject", () => {
  it("on a card that faces up is all that comes down in deep water (definition of Ed)", () => {
    const world = worldOf({ ...reef, subject_facing: "up" });
    cardDaylightAt(world, 7).forEach((e, i) => {
      expect(e).toBeCloseTo(downwellingAt(world, 7)[i], 12);
    });
    expect(levelDaylightAt(world, 7)).toEqual(downwellingAt(world, 7));
  });

  it("turns from the sun behind the camera over beside it to in the picture, on a solid subject less than on a card", () => {
    const sides = (["behind_camera", "beside", "in_frame"] as const).map((sun_side) => ({
      ...reef,
      sun_side,
    }));
    const [subject, card] = [subjectDaylightAt, cardDaylightAt].map((at) => sides.map((s) => lux(at, s)));
    for (const light of [subject, card]) {
      expect(light[0]).toBeGreaterThan(light[1]);
      expect(light[1]).toBeGreaterThan(light[2]);
    }
    expect(card[0] / card[2]).toBeGreaterThan(subject[0] / subject[2]);
    // Beside the sun or any way alike: a cardioid has the same mean (exact).
    expect(lux(subjectDaylightAt, reef)).toBeCloseTo(subject[1], 3);
  });

  it("is brighter by the sun behind the camera, while the open water is not", () => {
    expect(lux(subjectDaylightAt, behind)).toBeGreaterThan(lux(subjectDaylightAt, reef));
    expect(lux(openWaterAt, behind)).toBeLessThan(lux(openWaterAt, reef));
  });

  it("on what faces the sun or up does not ask where the camera looks, but the open water does", () => {
    for (const subject_facing of ["sun", "up"] as const) {
      for (const at of [subjectDaylightAt, cardDaylightAt]) {
        expect(lux(at, { ...behind, subject_facing })).toBe(
          lux(at, { ...reef, subject_facing, sun_side: "in_frame" }),
        );
      }
    }
    expect(lux(openWaterAt, { ...behind, subject_facing: "up" })).toBe(lux(openWaterAt, behind));
  });

  it("is more where the camera looks down on it, and less where it looks up", () => {
    for (const at of [subjectDaylightAt, cardDaylightAt]) {
      const [up, level, down] = [40, 0, -40].map((camera_tilt_deg) =>
        lux(at, { ...behind, camera_tilt_deg }),
      );
      expect(up).toBeLessThan(level);
      expect(level).toBeLessThan(down);
    }
  });

  it("in open water is more above than level, and less below", () => {
    const [up, level, down] = [30, 0, -30].map((camera_tilt_deg) =>
      lux(openWaterAt, { ...behind, camera_tilt_deg }),
    );
    // Preisendorfer's law alone, without what particles scatter forward, in water whose attenuation with depth is a third of its beam's.
    expect(up / level).toBeGreaterThan(1.2);
    expect(down / level).toBeLessThan(0.87);
  });

  it("is more over a floor, the more the paler and the nearer it is, and reaches a level card from below only by the surface", () => {
    for (const at of [subjectDaylightAt, cardDaylightAt, openWaterAt]) {
      const deep = lux(at, behind);
      const coral = lux(at, { ...behind, bottom: "coral", bottom_depth_m: 9 });
      const over = lux(at, { ...behind, ...sand });
      const near = lux(at, { ...behind, ...sand, bottom_depth_m: 7.5 });
      expect([deep, coral, over, near]).toEqual([deep, coral, over, near].sort((a, b) => a - b));
      expect(lux(at, { ...behind, ...sand }, { floorScale: 1.5 })).toBeGreaterThan(over);
    }
    const level = lux(levelDaylightAt, { ...behind, ...sand }) / lux(levelDaylightAt, behind);
    expect(level).toBeGreaterThan(1);
    expect(level).toBeLessThan(1.05);
  });

  it("is in doubt by which way the camera looks, and by the closed form", () => {
    for (const at of [subjectDaylightAt, cardDaylightAt]) {
      expect(lux(at, behind, { facing: 1 })).toBeGreaterThan(lux(at, behind));
      expect(lux(at, behind, { facing: -1 })).toBeLessThan(lux(at, behind));
      expect(lux(at, behind, { uprightScale: 0.8 }) / lux(at, behind)).toBeCloseTo(0.8, 12);
    }
    expect(lux(openWaterAt, behind, { facing: 1 })).toBeLessThan(lux(openWaterAt, behind));
  });

  it("is none at night, over any floor", () => {
    const night = { ...atNight({ ...behind, ...sand }), lamps: [TWO_LAMPS] };
    for (const at of [subjectDaylightAt, cardDaylightAt, openWaterAt, levelDaylightAt])
      expect(lux(at, night)).toBe(0);
  });
});
