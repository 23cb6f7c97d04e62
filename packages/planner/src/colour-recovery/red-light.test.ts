import { daylightScene, NIGHT_WRECK } from "@sunfathom/fixtures/scenes";
import { CLEAR } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { cameraState } from "../camera/camera-state.js";
import { recordedGrey } from "../camera/recording.js";
import { redShareAbove600, takeShot } from "../camera/shot.js";
import { conditionsOf } from "../light/conditions.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { ACCEPTABLE, EXCELLENT, GONE, greyIn, redLightIn } from "./red-light.js";

function shotOf(scene: Scene) {
  const camera = cameraState(scene, NOMINAL);
  const stage = stageAt(underwater(conditionsOf(scene), NOMINAL), scene.min_depth_m);
  return { shot: takeShot(stage, CLEAR, camera), sensor: camera.profile.sensor };
}

it("a grey of 18 % is that share of a white subject's light, and all of the haze over it, per channel", () => {
  const { shot } = shotOf(daylightScene("3C", 50, 6));
  expect(Math.min(...shot.haze)).toBeGreaterThan(0);
  expect(greyIn(shot)).toEqual([0, 1, 2].map((k) => 0.18 * shot.direct[k] + shot.haze[k]));
});

describe("the red light of a shot", () => {
  it("without haze has the signal over noise of the red channel times its share above 600 nm", () => {
    const { shot, sensor } = shotOf(NIGHT_WRECK);
    const { share, signalToNoise } = redLightIn(shot, sensor);
    expect(share).toBe(redShareAbove600(sensor, shot.subject));
    const { signalToNoise: whole } = recordedGrey(shot.recorder, 0, 0.18 * shot.direct[0]);
    expect(signalToNoise).toBeCloseTo(share * whole, 9);
  });

  it("under haze counts the subject's part alone, while the haze's noise stays", () => {
    const { shot, sensor } = shotOf(daylightScene("3C", 50, 6));
    const { share, signalToNoise } = redLightIn(shot, sensor);
    const grey = 0.18 * shot.direct[0] + shot.haze[0];
    const { signalToNoise: whole } = recordedGrey(shot.recorder, 0, grey);
    expect(signalToNoise).toBeCloseTo((share * whole * 0.18 * shot.direct[0]) / grey, 9);
  });
});

// ISO 12232: 40 is excellent and 10 acceptable; red against luminance counts 0.279 in noise power (from memory).
it("what is enough for red is less than for luminance, by the weight of its noise", () => {
  expect(EXCELLENT).toBeCloseTo(40 * Math.sqrt(0.279), 12);
  expect(ACCEPTABLE).toBeCloseTo(10 * Math.sqrt(0.279), 12);
  expect(GONE).toBe(1);
});
