import { describe, expect, it } from "vitest";
import { PIXELS, type Pixels } from "./pixels.js";
import {
  codesPerStop,
  electronsOf,
  fillingSensitivity,
  record,
  recordedGrey,
  shareOfFullScale,
} from "./recording.js";

const settings = { iso: 100, f_number: 8, shutter_s: 1 / 50, off_by_stops: 0, at_lowest_iso: true };
const full_lux = fillingSensitivity(1) / ((100 * (1 / 50)) / 64);
const recorder = {
  settings,
  gains: [1, 1, 1] as const,
  bits: 16,
  curve: "rec709" as const,
  fullWellScale: 1,
  pixels: PIXELS.compact,
  neutral_stops: 0,
};

describe("what a camera records", () => {
  it("fills its scale at H = 78 / S (ISO 12232): 78 * N^2 pi / (0.65 S t) lux on a white surface", () => {
    // 78 * 64 * pi / (0.65 * 100 * 0.02) = 12 063.7 lx
    expect(full_lux).toBeCloseTo(12063.7, 0);
    expect(shareOfFullScale(12063.716, settings)).toBeCloseTo(1, 6);
    expect(shareOfFullScale(full_lux / 2, { ...settings, iso: 200 })).toBeCloseTo(1, 10);
  });

  it("has photon and read noise as textbooks have it: sqrt(S + n_r^2) electrons, halved by averaging four pixels", () => {
    // Half of 20 000 electrons: sqrt(10 000 + 9) = 100.045 of 20 000, over 2.
    const { value, variance } = record(recorder, 0, full_lux / 2);
    expect(value).toBeCloseTo(0.5, 12);
    expect(Math.sqrt(variance) / (100.045 / 20000 / 2)).toBeCloseTo(1, 4);
    // In the dark the read noise is left: 3 electrons.
    expect(Math.sqrt(record(recorder, 1, 0).variance) / (3 / 20000 / 2)).toBeCloseTo(1, 2);
  });

  it("has one stop less room for electrons per stop of ISO: noise of the same value rises by sqrt 2", () => {
    const low = record(recorder, 0, full_lux / 2);
    const high = record({ ...recorder, settings: { ...settings, iso: 200 } }, 0, full_lux / 4);
    expect(high.value).toBeCloseTo(low.value, 12);
    expect(Math.sqrt(high.variance / low.variance)).toBeCloseTo(Math.SQRT2, 2);
  });

  it("holds as many electrons more as its wells are deeper, and less light behind neutral density, a half for each stop", () => {
    // 20 000 at ISO 100, half of them at half the light.
    expect(electronsOf(recorder, full_lux / 2)).toBeCloseTo(10000, 6);
    expect(electronsOf({ ...recorder, fullWellScale: 3 }, full_lux / 2)).toBeCloseTo(30000, 6);
    expect(electronsOf({ ...recorder, neutral_stops: 1 }, full_lux / 2)).toBeCloseTo(5000, 6);
    expect(record({ ...recorder, neutral_stops: 2 }, 0, full_lux).value).toBeCloseTo(0.25, 12);
  });

  it("counts with the pixels of the camera: four times as many averaged halve the noise, deeper wells hold more", () => {
    const of = (pixels: Pixels) => record({ ...recorder, pixels }, 0, full_lux / 2);
    const { phone, phone_merged, compact } = PIXELS;
    const noise = (pixels: Pixels) => Math.sqrt(of(pixels).variance);
    expect(noise({ ...compact, averaged: 16 }) / noise(compact)).toBeCloseTo(0.5, 12);
    // Eight frames for one.
    expect(noise(phone_merged) / noise(phone)).toBeCloseTo(1 / Math.sqrt(8), 12);
    expect(electronsOf({ ...recorder, pixels: phone }, full_lux)).toBeCloseTo(7000, 6);
    // Photon noise of a half: sqrt(3500 + 4) of 7000, over 2.
    expect(noise(phone) / (Math.sqrt(3504) / 7000 / 2)).toBeCloseTo(1, 4);
  });

  it("has for a grey's signal over noise the value over the root of its variance", () => {
    const grey = recordedGrey(recorder, 0, full_lux / 2);
    expect(grey).toMatchObject(record(recorder, 0, full_lux / 2));
    // 10 000 electrons of 100.045, of which four pixels leave half.
    expect(grey.signalToNoise / (10000 / (100.045 / 2))).toBeCloseTo(1, 4);
  });

  it("multiplies a channel's noise by its gain and leaves its signal-to-noise ratio alone", () => {
    const plain = record(recorder, 2, full_lux / 10);
    const gained = record({ ...recorder, gains: [1, 1, 4] }, 2, full_lux / 10);
    expect(gained.value).toBeCloseTo(4 * plain.value, 12);
    expect(Math.sqrt(gained.variance / plain.variance)).toBeCloseTo(4, 2);
  });

  it("clips at the top, before the gain as well as after it", () => {
    expect(record(recorder, 0, 5 * full_lux).value).toBe(1);
    expect(record({ ...recorder, gains: [3, 1, 1] }, 0, 0.9 * full_lux).value).toBe(1);
  });

  it.each([
    [0.8, 1.099 * 0.45 * 0.8 ** -0.55],
    [0.3, 1.099 * 0.45 * 0.3 ** -0.55],
    [0.01, 4.5],
  ])("adds the noise of code values, step^2 / 12, with the slope of ITU-R BT.709 at %d", (level, slope) => {
    // V = 1.099 L^0.45 - 0.099 from 0.018 on, 4.5 L below.
    const { variance } = record({ ...recorder, bits: 8 }, 0, level * full_lux);
    const electrons = (level * 20000 + 9) / 20000 ** 2;
    const step = 1 / (255 * slope);
    expect(variance / ((electrons + step ** 2 / 12) / 4)).toBeCloseTo(1, 8);
  });

  it("spreads codes evenly in light on a linear recording and evenly over stops on a logarithmic one", () => {
    // By definition: a stop below full scale takes half of a linear recording's codes, ln 2 of the slope at its end.
    expect(codesPerStop(1, 10, "linear")).toBeCloseTo(1023 * Math.LN2, 9);
    expect(codesPerStop(0.25, 10, "linear")).toBeCloseTo(codesPerStop(1, 10, "linear") / 4, 9);
    // Thirteen stops, from memory of cameras.
    for (const level of [0.9, 0.18, 0.01]) expect(codesPerStop(level, 10, "log")).toBeCloseTo(1023 / 13, 9);
    expect(codesPerStop(2 ** -14, 10, "log")).toBeCloseTo(1023 / 26, 9);
  });
});
