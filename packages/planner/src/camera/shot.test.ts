import { daylightScene, NIGHT_WRECK } from "@sunfathom/fixtures/scenes";
import { CLEAR, filterTransmittance, GRID_SIZE, multiply, scale, WAVELENGTHS_NM } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import { type Stage, stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { cameraState } from "./camera-state.js";
import { record, shareOfFullScale } from "./recording.js";
import { sensorOf } from "./sensor.js";
import { rawOf, sensorProfile } from "./sensor-profile.js";
import { redShareAbove600, takeShot } from "./shot.js";

const reef = daylightScene("IB", 45, 8);
const stageOf = (scene: Scene): Stage => stageAt(underwater(conditionsOf(scene), NOMINAL), scene.min_depth_m);
const shotOf = (scene: Scene, filter = CLEAR) =>
  takeShot(stageOf(scene), filter, cameraState(scene, NOMINAL));
const CHANNELS = [0, 1, 2] as const;

describe("a shot", () => {
  it.each([
    ["by day, through haze", reef],
    ["at night, without", NIGHT_WRECK],
  ] as [string, Scene][])(
    "exposes a card of 90 %% so that its strongest channel just fills the scale after balance, %s",
    (_, scene) => {
      const { direct, haze, recorder } = shotOf(scene);
      const values = CHANNELS.map((k) => record(recorder, k, 0.9 * direct[k] + haze[k]).value);
      expect(Math.max(...values)).toBeCloseTo(1, 9);
      expect(recorder.neutral_stops).toBe(0);
      // Fills it and no more: a record is clipped, what reaches the sensor is not.
      const reached = CHANNELS.map(
        (k) => recorder.gains[k] * shareOfFullScale(0.9 * direct[k] + haze[k], recorder.settings),
      );
      expect(Math.max(...reached)).toBeCloseTo(1, 9);
    },
  );

  it("sees subject and haze through the filter, as the sensor counts them", () => {
    const stage = stageOf(reef);
    const red = filterTransmittance("red", 0.6);
    const { subject, direct, haze } = shotOf(reef, red);
    const profile = sensorProfile(sensorOf({}, { crosstalkSd: 0 }));
    expect(subject).toEqual(multiply(stage.subject, red));
    expect(direct).toEqual(rawOf(profile, subject));
    expect(haze).toEqual(rawOf(profile, multiply(stage.background?.veil ?? CLEAR, red)));
    expect(Math.min(...haze)).toBeGreaterThan(0);
    expect(shotOf(NIGHT_WRECK).haze).toEqual([0, 0, 0]);
  });

  it("balances on a white card with the haze before it", () => {
    const wide = { ...reef, white_balance_max_duv: 0.1, white_balance_max_cct_K: 40000 };
    const { direct, haze, balance } = shotOf(wide);
    expect(balance.in_reach).toBe(true);
    const balanced = CHANNELS.map((k) => (direct[k] + haze[k]) * balance.gains[k]);
    expect(balanced[0] / balanced[1]).toBeCloseTo(1, 9);
    expect(balanced[2] / balanced[1]).toBeCloseTo(1, 9);
  });

  it("leaves what is too bright at the least sensitive settings to neutral density, and what is too dark as it is", () => {
    const { iso, f_number } = { iso: 800, f_number: 8 };
    const bright = shotOf({ ...daylightScene("I", 70, 2), iso, f_number });
    expect(bright.recorder.neutral_stops).toBeGreaterThan(1);
    expect(bright.recorder.neutral_stops).toBe(bright.recorder.settings.off_by_stops);
    const values = CHANNELS.map(
      (k) => record(bright.recorder, k, 0.9 * bright.direct[k] + bright.haze[k]).value,
    );
    expect(Math.max(...values)).toBeCloseTo(1, 9);
    const dark = shotOf({ ...daylightScene("5C", 15, 14), max_iso: 200 });
    expect(dark.recorder.settings.off_by_stops).toBeLessThan(-1);
    expect(dark.recorder.neutral_stops).toBe(0);
  });

  it("exposes a grey card at its own level, as a meter sees it behind the balance: weights of ITU-R BT.709", () => {
    const { direct, haze, recorder } = takeShot(
      stageOf(reef),
      CLEAR,
      cameraState(reef, NOMINAL, "in_camera"),
    );
    const [r, g, b] = CHANNELS.map(
      (k) => recorder.gains[k] * shareOfFullScale(0.18 * direct[k] + haze[k], recorder.settings),
    );
    expect(0.2126 * r + 0.7152 * g + 0.0722 * b).toBeCloseTo(0.18, 9);
  });

  it("exposes by itself for the mean of the picture, and shortens the time where there is too much light", () => {
    const auto: Scene = { ...reef, exposure_mode: "auto" };
    const stage = stageOf(auto);
    const { recorder } = takeShot(stage, CLEAR, cameraState(auto, NOMINAL));
    const mean = rawOf(sensorProfile(sensorOf({}, { crosstalkSd: 0 })), stage.whole());
    const [r, g, b] = CHANNELS.map((k) => recorder.gains[k] * shareOfFullScale(mean[k], recorder.settings));
    expect(0.2126 * r + 0.7152 * g + 0.0722 * b).toBeCloseTo(0.18, 9);
    const phone: Scene = { ...daylightScene("I", 70, 2), exposure_mode: "auto", iso: 200, f_number: 1.8 };
    const bright = takeShot(
      stageOf(phone),
      CLEAR,
      cameraState({ ...phone, min_f_number: 1.8 }, NOMINAL),
    ).recorder;
    expect(bright.settings.shutter_s).toBeLessThan(1 / 200);
    expect(bright.settings.off_by_stops).toBeCloseTo(0, 9);
    expect(bright.neutral_stops).toBeCloseTo(0, 9);
  });

  it("keeps an exposure that is given", () => {
    const given = { settings: { ...shotOf(reef).recorder.settings, iso: 1234 }, neutral_stops: 0.7 };
    const { recorder } = takeShot(stageOf(reef), CLEAR, cameraState(reef, NOMINAL), given);
    expect(recorder.settings).toBe(given.settings);
    expect(recorder.neutral_stops).toBe(0.7);
  });
});

describe("the camera of a scene", () => {
  it("records by BT.709 unless another curve is given, with the sensor and full well in question", () => {
    expect(cameraState(reef, NOMINAL)).toMatchObject({ curve: "rec709", bits: 8, fullWellScale: 1 });
    expect(cameraState({ ...reef, recording_curve: "log" }, NOMINAL).curve).toBe("log");
    const other = cameraState(reef, { ...NOMINAL, crosstalkSd: 1, fullWellScale: 2 });
    expect(other.fullWellScale).toBe(2);
    expect(other.profile).toBe(sensorProfile(sensorOf({}, { crosstalkSd: 1 })));
    expect(other.profile).not.toBe(sensorProfile(sensorOf({}, { crosstalkSd: 0 })));
  });
});

describe("the share of the red channel above 600 nm", () => {
  const even = new Float64Array(GRID_SIZE).fill(1);
  const sensor = { red: even, green: even, blue: even };

  it("is that of the band: 180 of 400 nm for even light and an even channel (trapezoid rule)", () => {
    expect(redShareAbove600(sensor, even)).toBeCloseTo(180 / 400, 12);
    expect(redShareAbove600(sensor, scale(even, 7))).toBeCloseTo(180 / 400, 12);
  });

  it("is all of it or nothing for light on one side alone", () => {
    expect(
      redShareAbove600(
        sensor,
        WAVELENGTHS_NM.map((nm) => (nm > 600 ? 1 : 0)),
      ),
    ).toBe(1);
    expect(
      redShareAbove600(
        sensor,
        WAVELENGTHS_NM.map((nm) => (nm < 600 ? 1 : 0)),
      ),
    ).toBe(0);
  });
});
