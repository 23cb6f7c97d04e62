import { daylightScene, NIGHT_WRECK, REEF_WITH_LAMPS } from "@sunfathom/fixtures/scenes";
import { chromaticity, illuminant, integrateProduct, multiply, xyzOf, Y_BAR } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { conditionsOf } from "./conditions.js";
import { DOME_AS_FLAT, openWaterAt, subjectDaylightAt } from "./daylight-at-depth.js";
import { stageAt } from "./stage.js";
import { lampLightAt, PORT, towardsCamera, underwater } from "./underwater.js";

const worldOf = (scene: Scene) => underwater(conditionsOf(scene), NOMINAL);
const reef = daylightScene("IB", 45, 12);

describe("what the camera looks at", () => {
  it("is a solid subject in daylight and lamp light, as a flat one that asks for the same exposure (250 over 340: ISO 2720), through the water and the port", () => {
    const world = worldOf(REEF_WITH_LAMPS);
    const [daylight, lamps, path] = [subjectDaylightAt(world, 12), lampLightAt(world), towardsCamera(world)];
    stageAt(world, 12).subject.forEach((e, i) => {
      expect(e).toBeCloseTo((250 / 340) * (daylight[i] + lamps[i]) * path[i] * PORT, 12);
    });
  });

  it("has no open water behind it in the dark", () => {
    const world = worldOf(NIGHT_WRECK);
    const { subject, background } = stageAt(world, 12);
    expect(background).toBeUndefined();
    const [lamps, path] = [lampLightAt(world), towardsCamera(world)];
    subject.forEach((e, i) => {
      expect(e).toBeCloseTo((250 / 340) * lamps[i] * path[i] * PORT, 12);
    });
  });

  it("has open water behind it that is darker than a white subject, where the sun is behind the camera", () => {
    const { background } = stageAt(worldOf({ ...reef, sun_side: "behind_camera" }), 12);
    const D65 = illuminant("D65");
    const luminance = background && integrateProduct(multiply(background.colour, D65), Y_BAR);
    const share = (luminance ?? 0) / integrateProduct(D65, Y_BAR);
    expect(share).toBeGreaterThan(0.05);
    expect(share).toBeLessThan(0.6);
  });

  it("whose colour is bluer than white in clear water, for water absorbs red (Pope & Fry 1997)", () => {
    const { background } = stageAt(worldOf(reef), 12);
    const white = chromaticity(xyzOf(illuminant("D65")));
    const water = chromaticity(xyzOf(multiply(background?.colour ?? illuminant("D65"), illuminant("D65"))));
    expect(water.x).toBeLessThan(white.x - 0.02);
  });

  it("is lit by daylight alone in the open water, and by lamps too on the subject", () => {
    const [plain, lit] = [worldOf({ ...REEF_WITH_LAMPS, lamps: [] }), worldOf(REEF_WITH_LAMPS)];
    const [without, with_] = [stageAt(plain, 12).background, stageAt(lit, 12).background];
    expect(with_?.openWater).toEqual(without?.openWater);
    const daylight = subjectDaylightAt(plain, 12);
    without?.openWater.forEach((e, i) => {
      expect(e).toBeCloseTo(DOME_AS_FLAT * daylight[i] * (without.colour[i] ?? 0) * PORT, 12);
      expect(e).toBeCloseTo(openWaterAt(plain, 12)[i] * PORT, 12);
    });
    expect(without?.againstSubject).toBeCloseTo(1, 12);
    const [sky, lamps] = [daylight, lampLightAt(lit)].map((light) => integrateProduct(light, Y_BAR));
    expect(with_?.againstSubject).toBeCloseTo(sky / (sky + lamps), 12);
  });

  it("lies behind haze: of open water what the path does not let through", () => {
    const world = worldOf({ ...reef, subject_distance_m: 3 });
    const { background } = stageAt(world, 12);
    const path = towardsCamera(world);
    background?.veil.forEach((e, i) => {
      expect(e).toBeCloseTo(background.openWater[i] * (1 - path[i]), 14);
    });
    expect(background?.veil).toBeDefined();
  });
});
