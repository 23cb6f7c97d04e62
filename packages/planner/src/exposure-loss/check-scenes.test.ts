/**
 * Exposure of a solid subject against practice, and laws of light in water: scenes fixed in test/support/check-scenes.ts before the
 * light was wired. Where model and practice part is told, split, on the accuracy page of this package.
 */
import { describe, expect, it } from "vitest";
import {
  LAGOON_OVER_SAND,
  PRACTICE_EV100,
  PRACTICE_SCENE,
  REEF_OVER_CORAL,
} from "../../../../test/support/check-scenes.js";
import { daylightScene } from "../../../../test/support/scenes.js";
import type { Scene, SunSide } from "../scene/scene.js";
import { exposureLoss } from "./exposure-loss.js";

const evOf = (scene: Scene): number => exposureLoss(scene).depths[0].exposure_value_ev100.likely;

describe("blue water of 15 m visibility under a clear sky, sun 60 degrees high and behind the camera", () => {
  const evAt = (depth_m: number) =>
    evOf({ ...PRACTICE_SCENE, lamps: [], min_depth_m: depth_m, max_depth_m: depth_m });

  it.each(PRACTICE_EV100)(
    "asks at $depth_m m for an EV of $from to $to (common practice, no published source), or a quarter of a stop more",
    ({ depth_m, from, to }) => {
      expect(evAt(depth_m)).toBeGreaterThan(from);
      expect(evAt(depth_m)).toBeLessThan(to + 0.25);
    },
  );

  it("is brighter than practice at 1.8, 9 and 15 m: what visibility says of attenuation, as the accuracy page splits it", () => {
    const above = PRACTICE_EV100.filter(({ depth_m, to }) => evAt(depth_m) > to);
    expect(above.map(({ depth_m }) => depth_m)).toEqual([1.8, 9, 15]);
  });
});

it("a lagoon over sand is brighter than a reef over coral, under the same sun", () => {
  expect(evOf({ ...LAGOON_OVER_SAND, lamps: [] })).toBeGreaterThan(evOf({ ...REEF_OVER_CORAL, lamps: [] }));
});

describe("a higher sun", () => {
  const at = (type: string, sun: number, depth_m: number, sun_side: SunSide) =>
    evOf({ ...daylightScene(type, sun, depth_m), sun_side });

  it.each(["I", "IB", "II", "3C"])(
    "is never darker on a solid subject in %s, where nobody said which way the camera looks",
    (type) => {
      for (const depth_m of [1, 6, 15]) {
        const values = [12, 20, 30, 40, 50, 60, 70, 80, 88].map((sun) => at(type, sun, depth_m, "unknown"));
        for (let n = 1; n < values.length; n++) expect(values[n]).toBeGreaterThanOrEqual(values[n - 1]);
      }
    },
  );

  it.each(["I", "IB", "II", "3C"])(
    "behind the camera is not darker at 88 than at 35 degrees in %s",
    (type) => {
      for (const depth_m of [1, 6, 15]) {
        expect(at(type, 88, depth_m, "behind_camera")).toBeGreaterThanOrEqual(
          at(type, 35, depth_m, "behind_camera"),
        );
      }
    },
  );
});
