// Guards which light stands over which in each number, channel by channel; casts and spectra have tests of their own.

import { atNight, daylightScene, NIGHT_WRECK, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { add, illuminance_lx, multiply, pathTransmittance } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { castBetween } from "../camera/cast.js";
import { rawOf } from "../camera/sensor-profile.js";
import { conditionsOf } from "../light/conditions.js";
import { lampsAtPort } from "../light/lamps.js";
import { towardsCamera, underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { lightsAt } from "./lights.js";
import { hazeOverGrey } from "./lit-haze.js";
import { falloffStops, numbersAt } from "./numbers.js";

const worldOf = (scene: Scene) => underwater(conditionsOf(scene), NOMINAL);
const BOTH: Scene = {
  ...daylightScene("IB", 50, 8),
  subject_distance_m: 0.7,
  lamps: [{ ...TWO_LAMPS, distance_m: 1.5 }, TWO_LAMPS],
};

describe("the numbers of two lights", () => {
  it("compare lamps with daylight at the sensor, per channel, in stops", () => {
    const world = worldOf(BOTH);
    const { daylight, lamps, profile } = lightsAt(world, 8);
    const path = towardsCamera(world);
    const [day, lamp] = [daylight, lamps].map((light) => rawOf(profile, multiply(light, path)));
    const { red, green, blue } = numbersAt(world, 8, true);
    [red, green, blue].forEach((stops, k) => {
      expect(stops).toBeCloseTo(Math.log2(lamp[k] / day[k]), 9);
    });
    expect(new Set([red, green, blue]).size).toBe(3);
  });

  it("tell what each balance leaves, and red's excess", () => {
    const world = worldOf(BOTH);
    const { daylight, lamps, profile } = lightsAt(world, 8);
    const both = add(daylight, lamps);
    const between = daylight.map((d, i) => Math.sqrt(d * lamps[i]));
    const numbers = numbersAt(world, 8, true);
    expect(numbers.split).toBeCloseTo(castBetween(profile, daylight, both), 9);
    expect(numbers.splitToLamps).toBeCloseTo(castBetween(profile, lamps, daylight), 9);
    expect(numbers.splitBetween).toBeCloseTo(castBetween(profile, between, daylight), 9);
    const [day, all] = [daylight, both].map((light) => rawOf(profile, light));
    expect(numbers.redExcess).toBeCloseTo(Math.log2(all[0] / day[0] / (all[1] / day[1])), 9);
  });

  it("tell both illuminances and the haze as logarithms to base 2", () => {
    const world = worldOf(BOTH);
    const { daylight, lamps } = lightsAt(world, 8);
    const numbers = numbersAt(world, 8, true);
    expect(2 ** numbers.log2LampLux).toBeCloseTo(illuminance_lx(lamps), 6);
    expect(2 ** numbers.log2DaylightLux / illuminance_lx(daylight)).toBeCloseTo(1, 9);
    expect(2 ** numbers.log2LitHaze).toBeCloseTo(hazeOverGrey(world), 9);
  });

  it("tell what water takes from the nearest lamp's light to the subject and on to the camera", () => {
    const world = worldOf(BOTH);
    const { profile } = lightsAt(world, 8);
    const port = lampsAtPort(BOTH.lamps);
    const left = rawOf(profile, multiply(port, pathTransmittance(world.path_per_m, 0.8 + 0.7)));
    const { waterRed, waterGreen, waterBlue } = numbersAt(world, 8, true);
    [waterRed, waterGreen, waterBlue].forEach((stops, k) => {
      expect(stops).toBeCloseTo(Math.log2(rawOf(profile, port)[k] / left[k]), 9);
    });
    expect(waterRed).toBeGreaterThan(waterBlue);
  });
});

describe("the numbers of one light", () => {
  const COMPARED = ["red", "green", "blue", "split", "splitToLamps", "splitBetween", "redExcess"] as const;

  it("compare nothing, and are finite in the dark", () => {
    for (const scene of [NIGHT_WRECK, daylightScene("IB", 50, 8)]) {
      const numbers = numbersAt(worldOf(scene), 8, false);
      expect(COMPARED.map((key) => numbers[key])).toEqual(COMPARED.map(() => 0));
      for (const number of Object.values(numbers)) expect(Number.isFinite(number)).toBe(true);
    }
    const dark = Math.log2(1e-6);
    expect(numbersAt(worldOf(NIGHT_WRECK), 8, false).log2DaylightLux).toBe(dark);
    const day = numbersAt(worldOf(daylightScene("IB", 50, 8)), 8, false);
    expect(day.log2LampLux).toBe(dark);
    expect([day.waterRed, day.waterGreen, day.waterBlue, day.log2LitHaze]).toEqual([0, 0, 0, 0]);
    expect(numbersAt(worldOf(NIGHT_WRECK), 8, false).waterRed).toBeGreaterThan(0);
  });
});

// Inverse square from the nearest lamp; a metre of water on top takes some.
it("light falls off behind the subject from the nearest lamp's distance on", () => {
  const world = worldOf({ ...atNight(BOTH), lamps: BOTH.lamps });
  const square = 2 * Math.log2(1.8 / 0.8);
  expect(falloffStops(world, 1)).toBeGreaterThan(square);
  expect(falloffStops(world, 1)).toBeLessThan(square + 0.5);
  expect(falloffStops(world, 0)).toBe(0);
});
