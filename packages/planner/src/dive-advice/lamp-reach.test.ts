import { atNight, daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { expect, it } from "vitest";
import type { Scene } from "../scene/scene.js";
import { lampReach } from "./lamp-reach.js";

const night: Scene = { ...atNight(daylightScene("I", 45, 10)), lamps: [TWO_LAMPS] };
const reach = (scene: Scene): number => lampReach(scene, 10).dark_m;

// The inverse square law (any textbook of photometry): five stops less are from 2^2.5 = 5.7 times as far. Clear water takes its share.
it("without daylight, lamps carry to where five stops are gone: nearer than by distance alone", () => {
  const alone_m = night.subject_distance_m + TWO_LAMPS.distance_m * (2 ** 2.5 - 1);
  expect(reach(night)).toBeLessThan(alone_m);
  expect(reach(night)).toBeGreaterThan(alone_m / 2);
});

it("in water that takes more they carry less, and no stronger lamp carries farther at the exposure that it asks for", () => {
  expect(reach({ ...night, water_type: "7C" })).toBeLessThan(reach(night));
  expect(reach({ ...night, lamps: [{ ...TWO_LAMPS, flux_lm: 2 * TWO_LAMPS.flux_lm }] })).toBeCloseTo(
    reach(night),
    6,
  );
});

it("where daylight is not five stops darker it is what is seen beyond", () => {
  const day: Scene = { ...daylightScene("I", 45, 10), lamps: [{ ...TWO_LAMPS, flux_lm: 100_000 }] };
  const { dark_m, daylight } = lampReach(day, 10);
  expect(daylight?.stops).toBeGreaterThan(0);
  expect(daylight?.stops).toBeLessThan(5);
  expect(dark_m).toBeGreaterThan(day.subject_distance_m);
  expect(lampReach({ ...day, lamps: [{ ...TWO_LAMPS, flux_lm: 1e8 }] }, 10).daylight).toBeUndefined();
});
