import { daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { attenuation } from "../attenuation/attenuation.js";
import { exposureLoss } from "../exposure-loss/exposure-loss.js";
import { mixedLight } from "../mixed-light/mixed-light.js";
import type { Scene } from "../scene/scene.js";
import { whiteBalance } from "../white-balance/white-balance.js";

const REEF = daylightScene("IB", 45, 8);
const ev = (scene: Scene) => exposureLoss(scene).depths[0].exposure_value_ev100.likely;
const codes = (told: readonly { code: string }[]) => told.map(({ code }) => code);

describe("what lies over the diver", () => {
  it("leaves the light as it is where nothing does", () => {
    expect(ev({ ...REEF, overhead: "none" })).toBe(ev(REEF));
  });

  it("halves the light with half of the opening: one stop (definition of a stop)", () => {
    const cavern = (daylight_open_share: number) => ev({ ...REEF, overhead: "cavern", daylight_open_share });
    expect(cavern(0.2) - cavern(0.1)).toBeCloseTo(1, 6);
  });

  it("is darker the more it closes: overhang, cavern, wreck; and under more ice, and under snow", () => {
    const under = (["overhang", "cavern", "wreck"] as const).map((overhead) => ev({ ...REEF, overhead }));
    expect(under).toEqual([...under].sort((a, b) => b - a));
    const ice = (ice_thickness_m: number, snow_thickness_m = 0) =>
      ev({ ...REEF, overhead: "ice", ice_thickness_m, snow_thickness_m });
    expect(ice(2)).toBeLessThan(ice(0.3));
    expect(ice(0.3, 0.2)).toBeLessThan(ice(0.3) - 1);
  });

  it("bears on every calculation that has daylight, with its reason, its doubt and its caution", () => {
    const wreck: Scene = { ...REEF, overhead: "wreck", lamps: [TWO_LAMPS] };
    for (const answer of [attenuation(wreck), exposureLoss(wreck), mixedLight(wreck), whiteBalance(wreck)]) {
      expect(codes(answer.reasons)).toContain("overhead_cuts");
      expect(codes(answer.cautions)).toContain("overhead_by_training");
      expect(answer.sources).toContain("overhead");
    }
    expect(codes(exposureLoss(wreck).uncertainty)).toContain("overhead");
    // What comes in under each is from memory, unless it was measured.
    const basis = (scene: Scene) =>
      attenuation(scene).reasons.find(({ code }) => code === "overhead_cuts")?.basis;
    expect(basis(wreck)).toBe("judgement");
    expect(basis({ ...wreck, daylight_open_share: 0.02 })).toBe("computed");
    expect(basis({ ...wreck, overhead: "ice" })).toBe("judgement");
    expect(basis({ ...wreck, overhead: "ice", ice_thickness_m: 1 })).toBe("computed");
    expect(mixedLight(wreck).depths[0].verdict).toBe("lamps_lead");
    expect(codes(mixedLight({ ...REEF, lamps: [TWO_LAMPS] }).cautions)).not.toContain("overhead_by_training");
  });
});
