// Guards what of the numbers is told in which case, and in which unit.

import { daylightScene, NIGHT_WRECK, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import { underwater } from "../light/underwater.js";
import type { Estimate } from "../result/common.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { mixedAtDepth, type NumberEstimates } from "./at-depth.js";
import { falloffStops } from "./numbers.js";

const e = (low: number, likely: number, high: number): Estimate => ({ low, likely, high });
const numbers: NumberEstimates = {
  red: e(1, 2, 3),
  green: e(4, 5, 6),
  blue: e(7, 8, 9),
  split: e(-1, 6, 8),
  splitToLamps: e(-2, 7, 9),
  splitBetween: e(-3, 4, 5),
  redExcess: e(-1, 0.5, 1),
  log2LampLux: e(9, 10, 11),
  log2DaylightLux: e(11, 12, 13),
  waterRed: e(0.1, 0.2, 0.3),
  waterGreen: e(0.4, 0.5, 0.6),
  waterBlue: e(0.7, 0.8, 0.9),
  log2LitHaze: e(-3, -2, 40),
};
const at = (scene: Scene, changes: Partial<NumberEstimates> = {}) =>
  mixedAtDepth(underwater(conditionsOf(scene), NOMINAL), scene.min_depth_m, { ...numbers, ...changes });
const fight: Scene = { ...daylightScene("IB", 50, 8), lamps: [TWO_LAMPS] };

describe("at a depth", () => {
  it("with both lights, they are compared, no cast below zero, and haze is capped where nothing is seen", () => {
    const { ways_out, ...answer } = at(fight);
    expect(answer).toEqual({
      depth_m: 8,
      verdict: "lights_fight",
      verdict_clarity: "near_tie",
      red_lamp_over_daylight_stops: numbers.red,
      green_lamp_over_daylight_stops: numbers.green,
      blue_lamp_over_daylight_stops: numbers.blue,
      split_delta_e00: e(0, 6, 8),
      split_balanced_to_lamps_delta_e00: e(0, 7, 9),
      split_balanced_between_delta_e00: e(0, 4, 5),
      red_excess_stops: numbers.redExcess,
      lamp_illuminance_lx: e(512, 1024, 2048),
      daylight_illuminance_lx: e(2048, 4096, 8192),
      lamp_red_water_loss_stops: numbers.waterRed,
      lamp_green_water_loss_stops: numbers.waterGreen,
      lamp_blue_water_loss_stops: numbers.waterBlue,
      lamp_falloff_1_m_behind_stops: falloffStops(underwater(conditionsOf(fight), NOMINAL), 1),
      lit_haze_percent: e(12.5, 25, 1e6),
    });
    expect(ways_out.length).toBeGreaterThan(2);
  });

  it("with daylight alone, lamps are dark and nothing of them is told", () => {
    expect(at(daylightScene("IB", 50, 8))).toEqual({
      depth_m: 8,
      verdict: "daylight_only",
      lamp_illuminance_lx: e(0, 0, 0),
      daylight_illuminance_lx: e(2048, 4096, 8192),
      ways_out: [],
    });
  });

  it("with lamps alone, daylight is dark and nothing is compared", () => {
    const answer = at(NIGHT_WRECK);
    expect(answer.verdict).toBe("lamps_only");
    expect(answer.daylight_illuminance_lx).toEqual(e(0, 0, 0));
    expect(answer.lamp_illuminance_lx).toEqual(e(512, 1024, 2048));
    expect(answer.lamp_red_water_loss_stops).toEqual(numbers.waterRed);
    expect(answer.ways_out).toEqual([]);
    for (const key of ["verdict_clarity", "split_delta_e00", "red_lamp_over_daylight_stops"])
      expect(answer).not.toHaveProperty(key);
  });

  it("with a light that leads, there is nothing to get out of", () => {
    const leads = at({ ...fight, lamps: [{ ...TWO_LAMPS, flux_lm: 20 }] });
    expect([leads.verdict, leads.ways_out]).toEqual(["daylight_leads", []]);
    expect(leads.verdict_clarity).toBe("near_tie");
  });

  it.each([
    [4.9, 5.1, "near_tie"],
    [5, 9, "clear"],
    [1, 5, "clear"],
    [6, 9, "clear"],
    [1, 4, "clear"],
  ])("a split from %d to %d is a %s about the visible 5", (low, high, clarity) => {
    expect(at(fight, { split: e(low, (low + high) / 2, high) }).verdict_clarity).toBe(clarity);
  });
});
