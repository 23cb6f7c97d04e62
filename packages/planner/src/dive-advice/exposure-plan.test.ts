import { BRIGHT_REEF, daylightScene, gradedScene, OUTER_REEF_MORNING } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import type { Scene } from "../scene/scene.js";
import { decided, grey } from "./decided.test-support.js";
import { endOfPlan, opensBy, startOfPlan } from "./exposure-plan.js";

const planOf = (scene: Scene) => decided(scene).exposure;
const wide: Scene = { ...daylightScene("I", 70, 1, 5), f_number: 4, min_iso: 100 };
const deep: Scene = { ...gradedScene("I", 70, 1, 40), f_number: 8, min_iso: 100 };

describe("how the camera is set over a dive", () => {
  it("is what each depth asks for where nothing is too bright", () => {
    const { stations, neutral } = planOf(OUTER_REEF_MORNING);
    expect(neutral).toBeUndefined();
    for (const { exposure, setting } of stations) {
      expect(setting.iso).toBeCloseTo(exposure.iso, 9);
      expect(setting.f_number).toBeCloseTo(exposure.f_number, 9);
    }
  });

  it("is behind whole stops of neutral density, to the end of the dive, where it is too bright all the way", () => {
    const { stations, neutral } = planOf(wide);
    expect(neutral).toBeDefined();
    // Ten stops of 0.3 are a density of 3: whole stops, and enough.
    expect(Math.abs((neutral?.density ?? 0) / 0.3 - Math.round((neutral?.density ?? 0) / 0.3))).toBeLessThan(
      1e-9,
    );
    expect((neutral?.density ?? 0) / 0.30103).toBeGreaterThan((neutral?.excess_stops ?? 99) - 0.2);
    expect(neutral).not.toHaveProperty("off");
    for (const { setting } of stations) expect(setting.behind).toEqual({ density: neutral?.density });
  });

  it("is behind none where the camera exposes itself: it shortens the exposure", () => {
    expect(planOf({ ...wide, exposure_mode: "auto" }).neutral).toBeUndefined();
  });

  it("has neutral density come off where it is no longer needed, if the mount lets it", () => {
    const { neutral, ...plan } = planOf({ ...deep, filter_change_underwater: "clip_on" });
    expect(neutral?.off?.depth_m).toBeGreaterThan(1);
    expect(startOfPlan(plan).setting).toHaveProperty("behind");
    expect(endOfPlan(plan).setting).not.toHaveProperty("behind");
    expect(neutral?.off?.without).not.toHaveProperty("behind");
  });

  it("closes the aperture, and then shortens the exposure, where a fixed filter would be in the way below", () => {
    const { neutral, ...plan } = planOf(deep);
    expect(neutral).toBeUndefined();
    expect(startOfPlan(plan).setting.f_number).toBeGreaterThan(8);
    const bound = planOf({ ...deep, max_f_number: 8 });
    expect(startOfPlan(bound).setting.shutter?.shutter_s).toBeLessThan(1 / 50);
    expect(endOfPlan(bound).setting).not.toHaveProperty("shutter");
    // What the aperture took there, the exposure time takes here.
    expect(Math.abs(opensBy(startOfPlan(plan).setting, startOfPlan(bound).setting, 1 / 50))).toBeLessThan(
      1 / 6,
    );
  });

  it("takes the weakest neutral filter that is owned and enough", () => {
    const free: Scene = { ...wide, max_iso: 6400 };
    const kit = [grey("dense", 3), grey("enough", 1.5), grey("weak", 0.3), grey("more", 2)];
    expect(planOf({ ...free, kit }).neutral).toMatchObject({ id: "enough", density: 1.5 });
    expect(planOf({ ...free, kit: [] }).neutral).not.toHaveProperty("id");
  });

  it("takes just what is too much where the camera has nothing free", () => {
    for (const f_number of [5, 5.6, 6.3]) {
      const { neutral, ...plan } = planOf({ ...BRIGHT_REEF, f_number });
      const taken = (neutral?.density ?? 0) / 0.30103;
      // Half a click of a dial.
      expect(Math.abs(taken - (neutral?.excess_stops ?? 0))).toBeLessThan(1 / 6 + 0.02);
      expect(startOfPlan(plan).setting).toMatchObject({ iso: 400, f_number });
    }
  });

  it("mounts none for less than a stop", () => {
    const least = { ...BRIGHT_REEF, f_number: 13, iso: 400 };
    expect(planOf(least).neutral).toBeUndefined();
  });
});
