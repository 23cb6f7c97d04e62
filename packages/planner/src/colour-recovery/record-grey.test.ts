// Guards which number of a recording comes from which channel and depth of bits: what they are is tested beside the camera.

import { daylightScene } from "@sunfathom/fixtures/scenes";
import { CLEAR, filterTransmittance } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { cameraState } from "../camera/camera-state.js";
import { codesPerStop, electronsOf, recordedGrey } from "../camera/recording.js";
import { takeShot } from "../camera/shot.js";
import { conditionsOf } from "../light/conditions.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { qualityOf, recordGrey } from "./record-grey.js";
import { greyIn, redLightIn } from "./red-light.js";

const made = (scene: Scene) => ({
  stage: stageAt(underwater(conditionsOf(scene), NOMINAL), scene.min_depth_m),
  camera: cameraState(scene, NOMINAL),
});

describe("a recorded grey", () => {
  it("has each channel's own electrons and noise, red's codes in each depth of bits, and red's share", () => {
    const { stage, camera } = made(daylightScene("IB", 50, 8));
    const record = recordGrey(stage, CLEAR, camera);
    const shot = takeShot(stage, CLEAR, camera);
    const grey = greyIn(shot);
    const { recorder } = shot;
    const recorded = ([0, 1, 2] as const).map((k) => recordedGrey(recorder, k, grey[k]));
    const balanced = grey.map((lux, k) => lux * shot.balance.gains[k]);
    const red = redLightIn(shot, camera.profile.sensor);
    expect(record).toEqual({
      iso: recorder.settings.iso,
      f_number: recorder.settings.f_number,
      shutter_s: recorder.settings.shutter_s,
      red_electrons: electronsOf(recorder, grey[0]),
      green_electrons: electronsOf(recorder, grey[1]),
      blue_electrons: electronsOf(recorder, grey[2]),
      red_signal_to_noise: recorded[0].signalToNoise,
      green_signal_to_noise: recorded[1].signalToNoise,
      blue_signal_to_noise: recorded[2].signalToNoise,
      red_above_600_nm_share: red.share,
      red_gain_needed: Math.max(...balanced) / balanced[0],
      red_codes_per_stop_8_bit: codesPerStop(recorded[0].value, 8, camera.curve),
      red_codes_per_stop_10_bit: codesPerStop(recorded[0].value, 10, camera.curve),
      red_codes_per_stop_12_bit: codesPerStop(recorded[0].value, 12, camera.curve),
      redLight: red.signalToNoise,
      exposure: recorder,
    });
  });

  // The density of a filter that takes n stops is n lg 2 (definition of optical density).
  it("names neutral density only where more light comes than the settings take", () => {
    const bright = made({ ...daylightScene("I", 70, 2), iso: 800, f_number: 8 });
    const record = recordGrey(bright.stage, CLEAR, bright.camera);
    expect(record.exposure.neutral_stops).toBeGreaterThan(1);
    expect(record.neutral_density).toBeCloseTo(record.exposure.neutral_stops * Math.log10(2), 12);
    const dim = made(daylightScene("IB", 50, 20));
    expect(recordGrey(dim.stage, CLEAR, dim.camera)).not.toHaveProperty("neutral_density");
  });

  it("keeps an exposure that is given", () => {
    const { stage, camera } = made(daylightScene("IB", 60, 5));
    const filter = filterTransmittance("red", 0.9);
    const bare = recordGrey(stage, CLEAR, camera);
    const same = recordGrey(stage, filter, camera, bare.exposure);
    const best = recordGrey(stage, filter, camera);
    expect([same.iso, same.f_number]).toEqual([bare.iso, bare.f_number]);
    expect(same.red_electrons).toBeLessThan(best.red_electrons);
  });
});

// The edges belong to the better word. ISO 12232 as in red-light.ts, from memory.
it("red is in words what its signal over noise is", () => {
  const weight = Math.sqrt(0.279);
  expect([1000, 40 * weight, 39 * weight, 10 * weight, 9.9 * weight, 1, 0.99, 0].map(qualityOf)).toEqual([
    "excellent",
    "excellent",
    "acceptable",
    "acceptable",
    "poor",
    "poor",
    "gone",
    "gone",
  ]);
});
