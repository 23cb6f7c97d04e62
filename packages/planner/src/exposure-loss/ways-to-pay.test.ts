// A way that is said to be enough must be: each is applied to the scene and asked again.

import { atNight, BRIGHT_REEF, daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Scene } from "../scene/scene.js";
import { at, BRIGHT_TO_F32, broken } from "./taken.test-support.js";

describe("a way to pay that is enough", () => {
  it("makes the exposure fit: too dark", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("IB", "III", "1C", "3C", "5C", "7C"),
        fc.integer({ min: 12, max: 50 }),
        fc.double({ min: 8, max: 25, noNaN: true }),
        fc.constantFrom(100, 200, 800),
        fc.boolean(),
        (type, sun, depth, max_iso, filtered) => {
          const scene: Scene = {
            ...daylightScene(type, sun, depth),
            min_iso: 100,
            max_iso,
            ...(filtered ? { filter_kind: "magenta" as const, filter_density: 0.6 } : {}),
          };
          fc.pre(at(scene).verdict === "too_dark");
          expect(broken(scene)).toEqual([]);
        },
      ),
      { seed: 12, numRuns: 12 },
    );
  });

  it("makes the exposure fit: too bright", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("I", "IB", "II", "1C"),
        fc.integer({ min: 40, max: 85 }),
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        fc.constantFrom(400, 800, 1600),
        (type, sun, depth, iso) => {
          const scene: Scene = { ...daylightScene(type, sun, depth), iso, f_number: 4 };
          fc.pre(at(scene).verdict === "too_bright");
          expect(broken(scene)).toEqual([]);
        },
      ),
      { seed: 13, numRuns: 12 },
    );
  });

  it("by a smaller aperture, where it is free to close: N grows by the root of two a stop (ISO 2720: N^2 / t)", () => {
    const { ways_to_pay, excess_stops, f_number_needed } = at(BRIGHT_TO_F32);
    const way = ways_to_pay.find(({ way: kind }) => kind === "aperture");
    expect(way?.enough).toBe(true);
    expect(way?.f_number).toBeCloseTo(5.6 * Math.SQRT2 ** (excess_stops?.likely ?? Number.NaN), 9);
    expect(way?.f_number).toBeCloseTo(f_number_needed ?? Number.NaN, 9);
    expect(broken(BRIGHT_TO_F32)).toEqual([]);
  });

  it("keeps the exposure that fits: the same product of ISO, time and 1/N^2, within the camera's limits", () => {
    for (const scene of [
      daylightScene("IB", 45, 8),
      daylightScene("3C", 40, 12),
      { ...daylightScene("I", 60, 3), max_f_number: 22 },
    ]) {
      const d = at(scene);
      expect(d.verdict).toBe("fits");
      expect(d.ways_to_pay.length).toBeGreaterThan(0);
      for (const { iso = d.iso, f_number = d.f_number } of d.ways_to_pay) {
        expect(iso / f_number ** 2).toBeCloseTo(d.iso / d.f_number ** 2, 9);
        expect(iso).toBeGreaterThanOrEqual(scene.min_iso - 1e-6);
        expect(iso).toBeLessThanOrEqual(scene.max_iso + 1e-6);
        expect(f_number).toBeLessThanOrEqual(scene.max_f_number);
      }
      expect(broken(scene)).toEqual([]);
    }
  });

  it("by lamps alone: a second lamp makes up for what is missing", () => {
    const scene: Scene = {
      ...atNight(daylightScene("1C", 45, 15)),
      max_iso: 200,
      lamps: [{ ...TWO_LAMPS, count: 1, flux_lm: 300, distance_m: 1 }],
    };
    const { verdict, ways_to_pay } = at(scene);
    expect(verdict).toBe("too_dark");
    // No daylight: neither the sun nor a shallower depth pays.
    const ways = ways_to_pay.map(({ way }) => way);
    expect(ways).toContain("lamp");
    expect(ways).not.toContain("higher_sun");
    expect(ways).not.toContain("shallower");
    expect(broken(scene)).toEqual([]);
  });

  it("those that are enough come first", () => {
    for (const scene of [BRIGHT_REEF, { ...daylightScene("3C", 20, 15), max_iso: 400 }]) {
      const enough = at(scene).ways_to_pay.map((w) => Number(w.enough));
      expect(enough).toEqual([...enough].sort((a, b) => b - a));
    }
  });
});
