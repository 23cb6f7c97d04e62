// Pixels that are drawn at random against the variance that the model counts, and against codes written by hand.

import { daylightScene } from "@sunfathom/fixtures/scenes";
import { mersenne } from "pure-rand/generator/mersenne";
import { describe, expect, it } from "vitest";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { cameraState } from "./camera-state.js";
import { exposePixels, stored } from "./expose-pixels.js";
import { fillingSensitivity, type Recorder, record } from "./recording.js";

const scene = daylightScene("IB", 45, 5);
const { bits, curve, pixels, fullWellScale } = cameraState(scene, NOMINAL);
/** 100 lux fill the scale. */
const shutter_s = 1 / 50;
const f_number = 4;
const iso = (fillingSensitivity(100) * f_number ** 2) / shutter_s;
const recorder: Recorder = {
  settings: { iso, f_number, shutter_s, off_by_stops: 0, at_lowest_iso: false },
  neutral_stops: 0,
  gains: [1, 1, 1],
  bits,
  curve,
  pixels,
  fullWellScale,
};

function drawn(lux: number, count = 20_000) {
  const generator = mersenne(1);
  const random = () => (generator.next() >>> 0) / 2 ** 32;
  const values = Array.from({ length: count }, () => exposePixels(recorder, [lux, lux, lux], random)[0]);
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (count - 1);
  return { mean, variance };
}

describe("pixels drawn at random", () => {
  // The variance of a sample of 20 000 has itself a spread of 1 %.
  it.each([3, 18, 60])(
    "have the mean and the variance that the model counts, at %d %% of the scale",
    (lux) => {
      const counted = record(recorder, 0, lux);
      const { mean, variance } = drawn(lux);
      expect(mean / counted.value).toBeCloseTo(1, 2);
      expect(variance / counted.variance).toBeGreaterThan(0.93);
      expect(variance / counted.variance).toBeLessThan(1.07);
    },
  );

  it("stop at the top of the recording, and at no light", () => {
    expect(drawn(300, 500)).toMatchObject({ mean: 1, variance: 0 });
    expect(drawn(0, 500).mean).toBeGreaterThanOrEqual(0);
  });
});

describe("what is stored", () => {
  it("is the nearest of 255 codes of ITU-R BT.709, by hand", () => {
    const recording = { bits: 8, curve: "rec709" } as const;
    // 0.18 has the share 0.4090 of 255 codes, 104.3: code 104, which stands for ((104 / 255 + 0.099) / 1.099)^(1 / 0.45).
    expect(stored(recording, 0.18)).toBeCloseTo(((104 / 255 + 0.099) / 1.099) ** (1 / 0.45), 12);
    // 0.002 has the share 0.009, 2.3 codes.
    expect(stored(recording, 0.002)).toBeCloseTo(2 / 255 / 4.5, 12);
    expect([stored(recording, -0.1), stored(recording, 0), stored(recording, 1.4)]).toEqual([0, 0, 1]);
  });
});
