// What is done where no light leads, against the merit that filters are judged by and a mean by hand.

import { daylightScene, REEF_WITH_LAMPS, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { CLEAR, integrateProduct, labOf, Y_BAR } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { WHITE_D65 } from "../camera/d65.js";
import { candidatesFor, NO_FILTER } from "../filter-choice/candidates.js";
import { chartSeen, expectedError, meritOf } from "../filter-choice/merit.js";
import { sightOf } from "../filter-choice/merits.js";
import { conditionsOf } from "../light/conditions.js";
import { itemAt } from "../lists/non-empty.js";
import { mixedLight } from "../mixed-light/mixed-light.js";
import type { KitItem, Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { frameErrorAt } from "./frame-error.js";
import { lampWaysAt, nextIsBetter } from "./lamp-choice.js";
import { bestOwnedLampFilter } from "./owned-lamp-filter.js";

const DEPTH_M = 12;
const errorOf = (scene: Scene, depth_m = DEPTH_M) =>
  frameErrorAt(conditionsOf(scene), NOMINAL, depth_m, NO_FILTER);
const flux = (flux_lm: number): Scene => ({ ...REEF_WITH_LAMPS, lamps: [{ ...TWO_LAMPS, flux_lm }] });
const meritAt = (scene: Scene) => {
  const { camera, finish, stages } = sightOf(conditionsOf(scene), NOMINAL, [DEPTH_M]);
  return meritOf(stages[0], CLEAR, camera, finish).delta_e00;
};

describe("the error of the whole picture", () => {
  it("is what a filter is judged by where lamps are off, or next to nothing", () => {
    const off = { ...REEF_WITH_LAMPS, lamps: [] };
    expect(errorOf(off)).toBe(meritAt(off));
    expect(errorOf(flux(0.01))).toBeCloseTo(meritAt(off), 3);
  });

  it("is half that of the subject, and half that of what has daylight alone in the subject's balance and exposure", () => {
    // In the picture that the camera makes a finish treats each patch alone, so that the second half can be worked out by hand: the
    // subject's light is scaled to daylight's, channel by channel, by what the lamps add to a grey card.
    const scene: Scene = { ...REEF_WITH_LAMPS, finish: "in_camera" };
    const { camera, stages } = sightOf(conditionsOf(scene), NOMINAL, [DEPTH_M]);
    const dark = sightOf(conditionsOf({ ...scene, lamps: [] }), NOMINAL, [DEPTH_M]).stages[0];
    const lit = chartSeen(stages[0], CLEAR, camera, { finish: "in_camera" });
    const darker = integrateProduct(dark.subject, Y_BAR) / integrateProduct(stages[0].subject, Y_BAR);
    // The same camera set by hand to what the subject had.
    const setByHand = { ...camera, balance: { gains: lit.shot.balance.gains } };
    const around = chartSeen({ ...stages[0], subject: dark.subject }, CLEAR, setByHand, {
      finish: "in_camera",
      given: lit.shot.recorder,
    });
    const errors = around.seen.map((target, place) => {
      const isPatch = place < 24;
      const [X, Y, Z] = target.wantedXyz;
      const wantedLab = isPatch ? labOf([X * darker, Y * darker, Z * darker], WHITE_D65) : target.wantedLab;
      return target.weight * expectedError({ ...target, wantedLab }, lit.finished);
    });
    const weights = around.seen.reduce((sum, { weight }) => sum + weight, 0);
    const byDay = errors.reduce((sum, error) => sum + error, 0) / weights;
    expect(errorOf(scene)).toBeCloseTo((meritAt(scene) + byDay) / 2, 9);
    expect(byDay).toBeGreaterThan(meritAt(scene));
  });

  it("is hardly more than the subject's where the lamps have daylight's colour: what is darker is meant to be", () => {
    const bare = frameErrorAt(conditionsOf(REEF_WITH_LAMPS), NOMINAL, DEPTH_M, NO_FILTER);
    const way = mixedLight(REEF_WITH_LAMPS).depths[0].ways_out.find((one) => one.way === "lamp_filter");
    // The curve that matches exactly, and lamps strong enough to be seen behind it.
    const filter_transmittance = way?.lamp_filter_transmittance ?? [];
    const lamps = [{ ...TWO_LAMPS, flux_lm: 8000, filter_transmittance }];
    const matched: Scene = { ...REEF_WITH_LAMPS, lamps };
    expect(errorOf(matched) - meritAt(matched)).toBeLessThan((bare - meritAt(REEF_WITH_LAMPS)) / 2);
  });
});

describe("the ways with the lamps", () => {
  const RED: KitItem = { id: "red", item: "lens_filter", filter_kind: "red", filter_density: 1.2 };
  const BLUE: KitItem = { id: "blue", item: "lamp_filter", filter_kind: "blue", filter_density: 0.9 };
  const waysFor = (scene: Scene, depth_m = DEPTH_M) =>
    lampWaysAt(scene, candidatesFor, depth_m, bestOwnedLampFilter(scene, depth_m));

  it("come by the error that they leave, each with the best filter for the lens with it", () => {
    for (const kit of [[RED, BLUE], [BLUE], undefined]) {
      const { ways, off_error_delta_e00 } = waysFor({ ...REEF_WITH_LAMPS, ...(kit ? { kit } : {}) });
      expect(ways.map(({ plan }) => plan).sort()).toEqual(
        [kit ? "lamps_with_filter" : "lamps_off", "lamps_with_daylight"].sort(),
      );
      expect(itemAt(ways, 1).error_delta_e00).toBeGreaterThanOrEqual(ways[0].error_delta_e00);
      for (const { conditions, lens, error_delta_e00 } of ways) {
        expect(frameErrorAt(conditions, NOMINAL, DEPTH_M, lens)).toBe(error_delta_e00);
      }
      const off = ways.find(({ plan }) => plan === "lamps_off");
      if (off) expect(off.error_delta_e00).toBe(off_error_delta_e00);
    }
  });

  it("turn from off to on where a filter has no red left to bring out, and say which is nearly as good", () => {
    // Common practice, no published source: filters in the shallows, video lights where it is deep.
    const lamps = [{ ...TWO_LAMPS, flux_lm: 6000, distance_m: 1 }];
    const at = (depth_m: number) =>
      waysFor({ ...daylightScene("IB", 55, depth_m), subject_distance_m: 1.2, lamps }, depth_m);
    expect(at(10).ways[0].plan).toBe("lamps_off");
    expect(at(32).ways[0].plan).toBe("lamps_with_daylight");
    let [shallow, deep] = [10, 32];
    for (let i = 0; i < 10; i++) {
      const middle = (shallow + deep) / 2;
      if (at(middle).ways[0].plan === "lamps_off") shallow = middle;
      else deep = middle;
    }
    expect(nextIsBetter(at(shallow).ways)).toBeGreaterThan(0.45);
    expect(nextIsBetter(at(shallow).ways)).toBeLessThanOrEqual(0.5);
    expect(nextIsBetter(at(10).ways)).toBeLessThan(0.2);
  });
});
