import { daylightScene, REEF_WITH_LAMPS, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { CLEAR, scale } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import { cardDaylightAt } from "../light/daylight-at-depth.js";
import { lampLightAt, underwater } from "../light/underwater.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { splitWithLampFilter } from "./lamp-filter-split.js";
import { mixedLight } from "./mixed-light.js";

describe("the split with a filter on every lamp", () => {
  it("is that of the lamps themselves through a clear one, at that depth, whatever filter they have on", () => {
    const bare = mixedLight(REEF_WITH_LAMPS).depths[0].split_delta_e00?.likely ?? Number.NaN;
    expect(splitWithLampFilter(REEF_WITH_LAMPS, 12, CLEAR)).toBeCloseTo(bare, 9);
    const blue = { ...TWO_LAMPS, filter_kind: "blue", filter_density: 0.6 } as const;
    expect(splitWithLampFilter({ ...REEF_WITH_LAMPS, lamps: [blue] }, 12, CLEAR)).toBeCloseTo(bare, 9);
    expect(splitWithLampFilter(REEF_WITH_LAMPS, 20, CLEAR)).toBeGreaterThan(bare);
  });

  it("is none through a filter that makes of the lamps' light the daylight there, as strong or as weak as it is", () => {
    for (const scene of [REEF_WITH_LAMPS, { ...daylightScene("3C", 50, 8), lamps: [TWO_LAMPS] }]) {
      const depth_m = scene.max_depth_m;
      const world = underwater(conditionsOf(scene), NOMINAL);
      const [daylight, lamps] = [cardDaylightAt(world, depth_m), lampLightAt(world)];
      const matching = daylight.map((light, i) => (lamps[i] > 0 ? light / lamps[i] : 0));
      for (const strength of [1, 0.1]) {
        expect(splitWithLampFilter(scene, depth_m, scale(matching, strength))).toBeLessThan(0.1);
      }
      expect(splitWithLampFilter(scene, depth_m, CLEAR)).toBeGreaterThan(3);
    }
  });

  it("is none through a filter that lets nothing pass", () => {
    expect(splitWithLampFilter(REEF_WITH_LAMPS, 12, scale(CLEAR, 0))).toBeCloseTo(0, 6);
  });
});
