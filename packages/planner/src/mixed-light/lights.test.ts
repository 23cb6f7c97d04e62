// Guards which light is said to lead, against the casts themselves.

import { atNight, daylightScene, NIGHT_WRECK, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { add } from "@sunfathom/optics";
import { expect, it } from "vitest";
import { castBetween } from "../camera/cast.js";
import { conditionsOf } from "../light/conditions.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { lightsAt, VISIBLE_SPLIT_DELTA_E00, verdictAt } from "./lights.js";

const worldOf = (scene: Scene) => underwater(conditionsOf(scene), NOMINAL);
const lit = (flux_lm: number, depth_m = 8): Scene => ({
  ...daylightScene("IB", 50, depth_m),
  lamps: [{ ...TWO_LAMPS, flux_lm }],
});

it("one light alone is told as such", () => {
  expect(verdictAt(worldOf(daylightScene("IB", 50, 8)), 8)).toBe("daylight_only");
  expect(verdictAt(worldOf(NIGHT_WRECK), 10)).toBe("lamps_only");
  expect(verdictAt(worldOf(atNight(daylightScene("IB", 50, 8))), 8)).toBe("daylight_only");
});

it("of two, that leads by which balance the other adds no visible cast to, the lamps first", () => {
  const met = new Set<string>();
  for (let flux_lm = 20; flux_lm < 3e6; flux_lm *= 1.5) {
    const world = worldOf(lit(flux_lm));
    const { daylight, lamps, profile } = lightsAt(world, 8);
    const both = add(daylight, lamps);
    const verdict = verdictAt(world, 8);
    met.add(verdict);
    const toLamps = castBetween(profile, lamps, both) <= VISIBLE_SPLIT_DELTA_E00;
    const toDaylight = castBetween(profile, daylight, both) <= VISIBLE_SPLIT_DELTA_E00;
    expect(verdict).toBe(toLamps ? "lamps_lead" : toDaylight ? "daylight_leads" : "lights_fight");
  }
  // From weak lamps to strong ones.
  expect([...met]).toEqual(["daylight_leads", "lights_fight", "lamps_lead"]);
});
