/**
 * Exposure of a solid subject against practice, and laws of light in water: scenes fixed in packages/fixtures/src/check-scenes.ts before the
 * light was wired. Where model and practice part is told, split, on the accuracy page of this package.
 */

import {
  LAGOON_OVER_SAND,
  PRACTICE_EV100,
  PRACTICE_SCENE,
  REEF_OVER_CORAL,
} from "@sunfathom/fixtures/check-scenes";
import { daylightScene } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
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

describe("three levels, side by side", () => {
  const levels = (change: Partial<Scene>) => {
    const scene: Scene = { ...PRACTICE_SCENE, lamps: [], min_depth_m: 6, max_depth_m: 6, ...change };
    const [at] = exposureLoss(scene).depths;
    return {
      card: at.card_exposure_value_ev100.likely,
      subject: at.exposure_value_ev100.likely,
      scene: at.scene_exposure_value_ev100?.likely ?? Number.NaN,
    };
  };

  it("card and dome that face up under a high sun differ by their receptors' constants, 250 and 340 (ISO 2720), or by less", () => {
    // Light from straight above falls on both alike; what falls slantwise counts for more on a dome, (1 + cos)/2 against cos.
    const up = levels({ subject_facing: "up", sun_elevation_deg: 88, min_depth_m: 0.1, max_depth_m: 0.1 });
    expect(up.card - up.subject).toBeLessThan(Math.log2(340 / 250));
    expect(up.card - up.subject).toBeGreaterThan(Math.log2(340 / 250) - 0.15);
  });

  it("the card tilts with the camera: looking down it faces the light above, looking up it turns away", () => {
    const [down, level, up] = [-45, 0, 45].map((camera_tilt_deg) => levels({ camera_tilt_deg }).card);
    expect(down).toBeGreaterThan(level + 0.5);
    expect(up).toBeLessThan(level - 0.5);
  });

  it("a dome feels the tilt less than a card", () => {
    const [down, up] = [-45, 45].map((camera_tilt_deg) => levels({ camera_tilt_deg }));
    expect(down.subject - up.subject).toBeLessThan(down.card - up.card);
  });

  it("with the sun behind the camera card and subject brighten, and the water behind them does not", () => {
    const [behind, facing] = (["behind_camera", "in_frame"] as const).map((sun_side) => levels({ sun_side }));
    expect(behind.card).toBeGreaterThan(facing.card + 0.3);
    expect(behind.subject).toBeGreaterThan(facing.subject + 0.3);
    expect(behind.scene - facing.scene).toBeLessThan(behind.subject - facing.subject);
  });
});
