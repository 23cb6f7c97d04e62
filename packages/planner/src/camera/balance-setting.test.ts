import { publishedIlluminant } from "@sunfathom/fixtures/illuminants";
import { daylightScene } from "@sunfathom/fixtures/scenes";
import { add, daylightOfCct, scale } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { balanceReach, kelvinGains } from "./balance-reach.js";
import { balanceOf, balanceSettingOf } from "./balance-setting.js";
import { perPlace, type Vector3 } from "./matrix.js";
import { sensorOf } from "./sensor.js";
import { rawOf, sensorProfile } from "./sensor-profile.js";

const scene = daylightScene("IB", 45, 8);
const profile = sensorProfile(sensorOf({}, { crosstalkSd: 0 }));
const reach = balanceReach(scene, profile);
const D65 = publishedIlluminant("D65");
const A = publishedIlluminant("A");
const neutral = (gains: Vector3, raw: Vector3) => perPlace((k) => (gains[k] * raw[k]) / (gains[1] * raw[1]));
const never = () => {
  throw new Error("not asked for");
};

describe("the balance that a camera sets", () => {
  it("on a card makes the card neutral, and looks at nothing else", () => {
    const card = rawOf(profile, D65);
    const { gains, in_reach } = balanceOf(balanceSettingOf(scene, profile), reach, card, never);
    expect(in_reach).toBe(true);
    expect(neutral(gains, card)).toEqual([1, 1, 1].map((v) => expect.closeTo(v, 9)));
  });

  it("in kelvin makes a black body of that temperature neutral (illuminant A is one of 2856 K, CIE 15), whatever it looks at", () => {
    const { gains } = balanceOf(
      balanceSettingOf({ ...scene, white_balance_mode: "kelvin", white_balance_kelvin_K: 2856 }, profile),
      reach,
      rawOf(profile, D65),
      never,
    );
    // The camera knows a colour by its matrix, which was fitted to patches: white comes out within a few percent.
    for (const value of neutral(gains, rawOf(profile, A))) expect(Math.abs(value - 1)).toBeLessThan(0.1);
    expect(gains).toEqual(kelvinGains(profile, 2856));
    expect(Math.min(...gains)).toBe(1);
  });

  it("in kelvin leaves a card in other light with a cast, and says how far it is from neutral", () => {
    const setting = { gains: kelvinGains(profile, 5600) };
    const { in_reach, residual_stops } = balanceOf(setting, reach, rawOf(profile, A), never);
    expect(in_reach).toBe(false);
    const [red, , blue] = neutral(setting.gains, rawOf(profile, A)).map(Math.log2);
    expect(residual_stops).toBeCloseTo(Math.hypot(red, blue), 9);
  });

  it("by itself makes the mean of the picture neutral (grey world, Buchsbaum 1980), and the card only where it is like the mean", () => {
    const auto = balanceSettingOf({ ...scene, white_balance_mode: "auto" }, profile);
    const card = rawOf(profile, D65);
    const mean = rawOf(profile, add(scale(D65, 0.7), scale(daylightOfCct(9000), 0.3)));
    const { gains, in_reach, residual_stops } = balanceOf(auto, reach, card, () => mean);
    expect(neutral(gains, mean)).toEqual([1, 1, 1].map((v) => expect.closeTo(v, 9)));
    expect(in_reach).toBe(false);
    expect(residual_stops).toBeGreaterThan(0.05);
    expect(balanceOf(auto, reach, card, () => perPlace((k) => 0.2 * card[k])).in_reach).toBe(true);
  });

  it("by itself goes no further than the camera's limits", () => {
    const auto = balanceSettingOf({ ...scene, white_balance_mode: "auto" }, profile);
    const blue: Vector3 = [0.02, 0.5, 1];
    const { gains } = balanceOf(auto, reach, blue, () => blue);
    expect(neutral(gains, blue)[0]).toBeLessThan(0.5);
  });

  it("in kelvin without kelvin is a scene that no rule lets pass", () => {
    expect(() => balanceSettingOf({ ...scene, white_balance_mode: "kelvin" }, profile)).toThrow(RangeError);
  });
});
