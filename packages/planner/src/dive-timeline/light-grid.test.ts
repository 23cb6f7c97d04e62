import { daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { attenuation } from "../attenuation/attenuation.js";
import { sensorOf } from "../camera/sensor.js";
import { sensorProfile } from "../camera/sensor-profile.js";
import { exposuresOf } from "../exposure-loss/exposures.js";
import { meteredOnSubject } from "../exposure-loss/sensitivity.js";
import { conditionsOf } from "../light/conditions.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { avoidableCast } from "../white-balance/avoidable-cast.js";
import { castsAt } from "./balances.js";
import { DRAWN_WITHIN, LightGrid } from "./light-grid.js";
import { NAMES } from "./light-here.js";

const place = { daylight_basis: "place_time", latitude_deg: -27.3, longitude_deg: -128.4 } as const;
const byClock = (time: string): Partial<Scene> => ({ ...place, time, sun_elevation_deg: undefined as never });
const scenes: Record<string, Scene> = {
  "clear water, a high sun": daylightScene("IB", 60, 0.3, 40),
  "green water": daylightScene("5C", 40, 0.3, 25),
  "brown water": daylightScene("9C", 50, 0.3, 12),
  "a low sun that climbs": { ...daylightScene("II", 50, 0.3, 30), ...byClock("2027-01-16T14:50:00Z") },
  "an afternoon": { ...daylightScene("1C", 50, 0.3, 30), ...byClock("2027-01-16T23:00:00Z") },
  "behind a red filter": { ...daylightScene("IB", 55, 0.3, 35), filter_kind: "red", filter_density: 0.9 },
  "with lamps, and a camera that sets itself": {
    ...daylightScene("III", 50, 0.3, 25),
    lamps: [TWO_LAMPS],
    white_balance_mode: "auto",
    exposure_mode: "auto",
  },
};

describe.each(Object.entries(scenes))("%s", (_, scene) => {
  const grid = new LightGrid(scene);
  const world = {
    profile: undefined as never,
    at: (_lens: unknown, time_s: number, depth_m: number) => grid.at(time_s, depth_m),
  };
  // Off the grid's own depths and times.
  const spots = Array.from({ length: 60 }, (_, i) => ({
    time_s: (i * 733) % 4000,
    depth_m: 0.3 * (scene.max_depth_m / 0.3) ** (((i * 37) % 60) / 59),
  }));

  it("is drawn within what is stated of what the model says", () => {
    let most = 0;
    for (const { time_s, depth_m } of spots) {
      const drawn = grid.at(time_s, depth_m);
      const exact = grid.exactlyAt(time_s, depth_m);
      for (const name of NAMES) most = Math.max(most, Math.abs(drawn[name] - exact[name]));
    }
    expect(most).toBeLessThan(DRAWN_WITHIN.stops);
    // And it is drawn: some of it is off.
    expect(most).toBeGreaterThan(1e-5);
  });

  it("says what the exposure, the attenuation and the balance of single scenes say", () => {
    if (scene.white_balance_mode === "auto") return;
    const { min_depth_m, max_depth_m } = scene;
    const { depths } = exposuresOf(scene);
    for (const exposure of depths) {
      const { ev100 } = grid.at(0, exposure.depth_m);
      expect(Math.abs(ev100 - meteredOnSubject(exposure))).toBeLessThan(DRAWN_WITHIN.stops);
    }
    for (const { depth_m, red_loss_stops } of attenuation(scene).depths)
      expect(Math.abs(grid.at(0, depth_m).redLoss - red_loss_stops.likely)).toBeLessThan(DRAWN_WITHIN.stops);
    const conditions = conditionsOf(scene);
    const single = avoidableCast(conditions, underwater(conditions, NOMINAL));
    const profiled = { ...world, profile: profileOf(scene) };
    for (const share of [0.1, 0.35, 0.6, 0.9]) {
      const balanced_m = min_depth_m + share * 0.7 * (max_depth_m - min_depth_m);
      const seen_m = min_depth_m + share * (max_depth_m - min_depth_m);
      const at = (depth_m: number) => ({ lens: "bare", time_s: 0, depth_m }) as const;
      const { before, after } = castsAt(scene, profiled, at(balanced_m), at(seen_m));
      expect(Math.abs(before - after - single(balanced_m, seen_m))).toBeLessThan(DRAWN_WITHIN.delta_e00);
    }
  });
});

it("asks the model at few depths and times, however many samples there are", () => {
  const grid = new LightGrid(scenes["an afternoon"] as Scene);
  for (let i = 0; i < 20_000; i++) grid.at((i * 3600) / 20_000, 1 + 14 * (1 + Math.sin(i)));
  expect(grid.size).toBeLessThan(400);
});

function profileOf(scene: Scene) {
  return sensorProfile(sensorOf(scene, NOMINAL));
}
