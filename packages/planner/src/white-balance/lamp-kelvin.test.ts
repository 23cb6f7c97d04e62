import { NIGHT_WRECK, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import type { Lamp } from "../scene/scene.js";
import { lampKelvin } from "./lamp-kelvin.js";

const of = (lamp: Partial<Lamp>, subject_distance_m = NIGHT_WRECK.subject_distance_m) =>
  lampKelvin(conditionsOf({ ...NIGHT_WRECK, subject_distance_m, lamps: [{ ...TWO_LAMPS, ...lamp }] }));

describe("the kelvin setting for lamps", () => {
  it.each([3000, 5600])(
    "is that of lamps sold as %i K, to a hundred, whatever water lies before them",
    (cct_K) => {
      const setting_K = of({ cct_K }).lamp_kelvin_setting_K ?? Number.NaN;
      expect(Math.abs(setting_K - cct_K)).toBeLessThan(100);
      expect(of({ cct_K, distance_m: 2 }).lamp_kelvin_setting_K).toBe(setting_K);
    },
  );

  it("leaves the cast of the water between, the more of it the farther, and hardly any at hand", () => {
    const left = (distance_m: number, subject_m: number) => {
      const { low, likely, high } = of({ distance_m }, subject_m).lamp_kelvin_leaves_delta_e00 ?? {
        low: Number.NaN,
        likely: Number.NaN,
        high: Number.NaN,
      };
      expect(low).toBeGreaterThanOrEqual(0);
      expect(low).toBeLessThanOrEqual(likely);
      expect(likely).toBeLessThanOrEqual(high);
      return likely;
    };
    const near = left(0.05, 0.05);
    expect(near).toBeLessThan(1);
    expect(left(0.8, 1)).toBeGreaterThan(2 * near);
    expect(left(1.6, 1)).toBeGreaterThan(left(0.8, 1));
    expect(left(0.8, 2)).toBeGreaterThan(left(0.8, 1));
  });

  it("is absent, and what it leaves too, where their light has no such temperature", () => {
    expect(of({ filter_kind: "green", filter_density: 3 })).toEqual({});
  });
});
