// Which ways to pay are told, and where.

import { atNight, BRIGHT_REEF, daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import type { Scene } from "../scene/scene.js";
import { at, BRIGHT_TO_F32, broken, taken } from "./taken.test-support.js";

describe("frame rate", () => {
  const dark: Scene = { ...daylightScene("5C", 15, 18), max_iso: 200, shutter_s: 1 / 50 };
  const shutterOf = (frame_rate_fps: number) =>
    at({ ...dark, frame_rate_fps }).ways_to_pay.find(({ way }) => way === "shutter");

  it("no exposure lasts longer than a frame: at 25 fps 1/25 s at most, one stop more than 1/50 s", () => {
    const way = shutterOf(25);
    expect(way?.shutter_s).toBeCloseTo(1 / 25, 12);
    expect(way?.gains_stops).toBeCloseTo(1, 12);
    expect(way?.enough).toBe(false);
  });

  it("is not called enough for a gain that stops short: at 15 fps 1.74 of some 2.5 stops", () => {
    expect(shutterOf(15)?.gains_stops).toBeCloseTo(Math.log2(50 / 15), 12);
    expect(at(dark).shortfall_stops?.likely).toBeGreaterThan(Math.log2(50 / 15) + 0.2);
    expect(shutterOf(15)?.enough).toBe(false);
  });

  it("is no way at all where the time already fills the frame (a shutter angle of 360 degrees)", () => {
    expect(shutterOf(50)).toBeUndefined();
  });

  it("leaves as much as is needed where frames are long enough", () => {
    const { shortfall_stops } = at(dark);
    const way = shutterOf(1);
    expect(way?.gains_stops).toBeCloseTo(shortfall_stops?.likely ?? Number.NaN, 9);
    expect(way?.enough).toBe(true);
  });
});

describe("which ways are told", () => {
  const kinds = (scene: Scene) => at(scene).ways_to_pay.map(({ way }) => way);
  const DARK: Scene = { ...daylightScene("5C", 15, 12), max_iso: 200 };

  it("too bright: all that cure it, each by the whole excess, the aperture only as far as it closes", () => {
    const { ways_to_pay, excess_stops } = at(BRIGHT_TO_F32);
    expect(kinds(BRIGHT_TO_F32)).toEqual(["aperture", "neutral_density", "shutter"]);
    for (const { gains_stops, enough } of ways_to_pay) {
      expect(gains_stops).toBeCloseTo(-(excess_stops?.likely ?? Number.NaN), 9);
      expect(enough).toBe(true);
    }
    expect(kinds({ ...BRIGHT_REEF, max_f_number: 5.6 })).toEqual(["neutral_density", "shutter"]);
    // Half a stop of aperture, f/5.6 to f/6.66, is not enough and comes last.
    const half = at({ ...BRIGHT_REEF, max_f_number: 5.6 * 2 ** 0.25 }).ways_to_pay;
    expect(half.map(({ way }) => way)).toEqual(["neutral_density", "shutter", "aperture"]);
    expect(half[2].gains_stops).toBeCloseTo(-0.5, 9);
    expect(half[2]).toMatchObject({
      code: "close_aperture",
      parameters: { f_number: 5.6 * 2 ** 0.25, enough: false },
    });
    expect(ways_to_pay[0]).toMatchObject({ code: "close_aperture", parameters: { enough: true } });
    expect(ways_to_pay.map(({ code }) => code)).toEqual([
      "close_aperture",
      "neutral_density",
      "shorter_shutter",
    ]);
  });

  it("too dark: a higher sun, less depth, lamps, time and, where none are enough, gain beyond the camera's", () => {
    const missing = at(DARK).shortfall_stops?.likely ?? Number.NaN;
    const ways = at(DARK).ways_to_pay;
    expect(ways.map(({ way }) => way)).toEqual(["higher_sun", "shallower", "lamp", "shutter", "iso"]);
    expect(ways.map(({ code }) => code)).toEqual([
      "if_sun_rises",
      "shallower",
      "add_lamp",
      "longer_shutter",
      "more_gain",
    ]);
    expect(ways.map(({ enough }) => enough)).toEqual([true, true, true, true, false]);
    for (const { way, gains_stops } of ways) {
      if (way !== "higher_sun") expect(gains_stops).toBeCloseTo(missing, 6);
    }
    expect(ways[4].iso).toBeCloseTo(200 * 2 ** missing, 6);
    // Nothing is asked for that no camera has.
    const hopeless = { ...DARK, min_depth_m: 60, max_depth_m: 60 };
    expect(kinds(hopeless)).not.toContain("iso");
    expect(kinds(hopeless)).not.toContain("shutter");
    // Up to a degree higher is no higher sun; where place and day are not known, it comes to 60 degrees.
    for (const sun_elevation_deg of [89.5, 59.5]) {
      const deep = { ...DARK, sun_elevation_deg, min_depth_m: 25, max_depth_m: 25 };
      expect(kinds(deep)).toContain("lamp");
      expect(kinds(deep)).not.toContain("higher_sun");
    }
  });

  it("too dark even in the shallows: no depth is told at which it would not fit", () => {
    const murk: Scene = { ...DARK, max_iso: 200, shutter_s: 1 / 1000, filter_kind: "red", filter_density: 2 };
    expect(at({ ...murk, min_depth_m: 0.5, max_depth_m: 0.5 }).verdict).toBe("too_dark");
    expect(at(murk).verdict).toBe("too_dark");
    expect(kinds(murk)).not.toContain("shallower");
  });

  it("too dark: a lamp like those there are adds what is missing, no more and no less", () => {
    // Of the same light as the lamps of the scene and as near: nothing but the amount changes.
    const scene: Scene = {
      ...atNight(daylightScene("5C", 45, 15)),
      max_iso: 200,
      lamps: [{ ...TWO_LAMPS, count: 1, flux_lm: 300 }],
    };
    const { exposure_value_ev100, shortfall_stops, ways_to_pay } = at(scene);
    const way = ways_to_pay.find(({ way: kind }) => kind === "lamp");
    if (!way) throw new Error("no lamp among the ways");
    const lit = at(taken(scene, way));
    expect(lit.exposure_value_ev100.likely).toBeCloseTo(
      exposure_value_ev100.likely + (shortfall_stops?.likely ?? Number.NaN),
      9,
    );
    // Illuminance goes with flux: by hand from the lamp that is there.
    expect(way.lamp_flux_lm).toBeCloseTo(300 * (2 ** (shortfall_stops?.likely ?? Number.NaN) - 1), 6);
  });

  it("too dark at an ISO that the diver fixed: gain is enough as far as the camera goes", () => {
    const fixed = { ...daylightScene("IB", 45, 25), iso: 200, f_number: 16 };
    const missing = at(fixed).shortfall_stops?.likely ?? Number.NaN;
    const gain = (max_iso: number) => at({ ...fixed, max_iso }).ways_to_pay.find(({ way }) => way === "iso");
    expect(gain(200 * 2 ** (missing + 0.1))?.enough).toBe(true);
    expect(gain(200 * 2 ** (missing - 0.1))?.enough).toBe(false);
  });

  it("too dark behind a filter: without it, enough where it takes what is missing", () => {
    const scene = (density: number, max_iso: number): Scene => ({
      ...daylightScene("IB", 45, 25),
      max_iso,
      filter_kind: "red",
      filter_density: density,
    });
    const iso = at(scene(0.9, 409600)).iso;
    const off = (max_iso: number) =>
      at(scene(0.9, max_iso)).ways_to_pay.find(({ way }) => way === "filter_off");
    const takes = at(scene(0.9, 409600)).lens_filter_loss_stops.likely;
    expect(off(iso / 2 ** (takes - 0.1))?.enough).toBe(true);
    expect(off(iso / 2 ** (takes + 0.1))?.enough).toBe(false);
    expect(kinds(DARK)).not.toContain("filter_off");
  });

  it("fits: wide open where ISO can go that low, and stopped down as far as lens and gain go", () => {
    const ways = (change: Partial<Scene>) =>
      at({ ...daylightScene("IB", 45, 8), ...change }).ways_to_pay.map((w) => [
        w.way,
        w.enough,
        w.gains_stops,
        w.parameters,
      ]);
    const { iso, f_number } = at({ ...daylightScene("IB", 45, 8), f_number: 4, min_iso: 1, max_iso: 409600 });
    // By hand: ISO goes with the square of the f-number (ISO 2720).
    const wide = iso * (2.8 / f_number) ** 2;
    const limits = { min_iso: wide * 1.01, max_iso: wide * 4 };
    expect(ways(limits)).toEqual([
      ["aperture", true, 0, { f_number: expect.closeTo(5.6, 6), iso: expect.closeTo(wide * 4, 6) }],
    ]);
    const free = at({ ...daylightScene("IB", 45, 8), min_iso: wide / 2, max_iso: wide * 4 });
    const [open, closed] = free.ways_to_pay;
    expect([open.way, open.f_number, open.iso]).toEqual(["iso", 2.8, expect.closeTo(wide, 6)]);
    expect([closed.way, closed.f_number, closed.iso]).toEqual([
      "aperture",
      expect.closeTo(5.6, 6),
      expect.closeTo(wide * 4, 6),
    ]);
    for (const { enough, gains_stops } of free.ways_to_pay) expect([enough, gains_stops]).toEqual([true, 0]);
    expect([open.code, open.parameters]).toEqual([
      "wide_open",
      { f_number: 2.8, iso: expect.closeTo(wide, 6) },
    ]);
  });

  it("fits at an aperture that the diver fixed: wide open is what the lens has, and nothing is told of closing it", () => {
    const fixed = { ...daylightScene("IB", 45, 8), f_number: 8, min_iso: 5 };
    const { verdict, iso, ways_to_pay } = at(fixed);
    expect(verdict).toBe("fits");
    expect(ways_to_pay.map(({ way, f_number }) => [way, f_number])).toEqual([["iso", 2.8]]);
    expect(ways_to_pay[0].iso).toBeCloseTo(iso * (2.8 / 8) ** 2, 9);
    expect(broken(fixed)).toEqual([]);
    expect(kinds({ ...fixed, min_iso: iso / 2 })).toEqual([]);
  });

  it("fits at an ISO that the diver fixed a little too low: the aperture is wide open, and cannot close", () => {
    const wide = at({ ...daylightScene("IB", 45, 8), f_number: 2.8, min_iso: 1, max_iso: 409600 }).iso;
    const low = at({ ...daylightScene("IB", 45, 8), iso: wide * 2 ** (-1 / 12) });
    expect(low.verdict).toBe("fits");
    expect(low.ways_to_pay.map(({ way, f_number }) => [way, f_number])).toEqual([["iso", 2.8]]);
  });
});
