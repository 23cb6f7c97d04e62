// Guards how a range is cut into stretches: the verdicts at its depths are tested beside lights.ts.

import { daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import { underwater } from "../light/underwater.js";
import type { Lamp } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { verdictAt } from "./lights.js";
import { zonesOf } from "./zones.js";

const worldOf = (from_m: number, to_m: number, lamps: Lamp[] = [TWO_LAMPS]) =>
  underwater(conditionsOf({ ...daylightScene("IB", 40, from_m, to_m), lamps }), NOMINAL);

describe("zones", () => {
  it("are one where one verdict holds, over all of the range", () => {
    expect(zonesOf(worldOf(3, 17.1, []))).toEqual([
      { verdict: "daylight_only", min_depth_m: 3, max_depth_m: 17.1 },
    ]);
    expect(zonesOf(worldOf(5, 5, []))).toEqual([
      { verdict: "daylight_only", min_depth_m: 5, max_depth_m: 5 },
    ]);
  });

  it.each([
    ["a quarter of a metre", 1, 11],
    ["a sixtieth of a longer range", 1, 46],
  ])("are found to %s, shallow first, from end to end", (_what, from_m, to_m) => {
    const world = worldOf(from_m, to_m, [{ ...TWO_LAMPS, flux_lm: 8000 }]);
    const step_m = Math.max(0.25, (to_m - from_m) / 60);
    const zones = zonesOf(world);
    expect(zones.length).toBeGreaterThan(1);
    expect([zones[0].min_depth_m, zones[zones.length - 1].max_depth_m]).toEqual([from_m, to_m]);
    zones.forEach(({ verdict, min_depth_m, max_depth_m }, i) => {
      expect([verdictAt(world, min_depth_m), verdictAt(world, max_depth_m)]).toEqual([verdict, verdict]);
      if (i === 0) return;
      expect(min_depth_m - zones[i - 1].max_depth_m).toBeCloseTo(step_m, 9);
      expect(verdict).not.toBe(zones[i - 1].verdict);
    });
  });
});
