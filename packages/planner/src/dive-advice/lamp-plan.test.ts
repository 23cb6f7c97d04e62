import { daylightScene, REEF_WITH_LAMPS, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { CLEAR, filterTransmittance, listOf, WAVELENGTHS_NM } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { splitWithLampFilter } from "../mixed-light/lamp-filter-split.js";
import { mixedLight } from "../mixed-light/mixed-light.js";
import type { KitItem, Scene } from "../scene/scene.js";
import { decisionsFor } from "./decisions.js";
import { matches } from "./lamp-choice.js";
import { planLamps, withLampPlan } from "./lamp-plan.js";
import { bestOwnedLampFilter } from "./owned-lamp-filter.js";

const [fighting] = mixedLight(REEF_WITH_LAMPS).depths;
const blue = (id: string, filter_density: number, item: KitItem["item"] = "lamp_filter"): KitItem => ({
  id,
  item,
  filter_kind: "blue",
  filter_density,
});
const owning = (...kit: KitItem[]): Scene => ({ ...REEF_WITH_LAMPS, kit });
const bestOf = (...kit: KitItem[]) => bestOwnedLampFilter(owning(...kit), fighting.depth_m);
/** A curve as a laboratory would measure it, of a filter that serves here. */
const CURVE = listOf(filterTransmittance("blue", 0.9)).map((transmittance, i) => ({
  wavelength_nm: WAVELENGTHS_NM[i],
  transmittance,
}));
const measured: KitItem = { id: "measured", item: "lamp_filter", filter_transmittance: CURVE };

describe("the lamp filter that is owned", () => {
  it("is the one that leaves the least split, wherever it stands in the kit, with what it leaves", () => {
    const filters = [0.75, 0.9, 1.05].map((density) => blue(`b${density}`, density));
    const left = filters.map((item) => bestOf(item)?.split_left_delta_e00 ?? Number.POSITIVE_INFINITY);
    const least = Math.min(...left);
    expect(least).toBeLessThan(5);
    for (const kit of [filters, [...filters].reverse()]) {
      const best = bestOf(...kit);
      expect(best?.split_left_delta_e00).toBe(least);
      expect(best?.item).toBe(filters[left.indexOf(least)]);
    }
  });

  it("stays in the bag where it leaves a split seen at a glance (5, a judgement), and is none that is made for the lens", () => {
    expect(matches(bestOf(blue("weak", 0.15)))).toBe(false);
    expect(matches(bestOf(blue("right", 0.9)))).toBe(true);
    expect(matches(undefined)).toBe(false);
    expect(splitWithLampFilter(REEF_WITH_LAMPS, 12, CLEAR)).toBeGreaterThan(5);
    expect(bestOf(blue("lens", 0.9, "lens_filter"))).toBeUndefined();
    expect(bestOf({ id: "lamp", item: "lamp" })).toBeUndefined();
    // What is known of it is neither a curve nor a density.
    expect(bestOf({ id: "some", item: "lamp_filter", filter_kind: "blue" })).toBeUndefined();
    expect(bestOf({ id: "some", item: "lamp_filter", filter_density: 0.9 })).toBeUndefined();
    expect(bestOwnedLampFilter(REEF_WITH_LAMPS, fighting.depth_m)).toBeUndefined();
  });

  it("counts by its measured curve where it has one, whatever kind it is called", () => {
    const split = bestOf(measured)?.split_left_delta_e00 ?? Number.NaN;
    expect(split).toBeLessThan(5);
    const called = { ...measured, filter_kind: "red" as const, filter_density: 2 };
    expect(bestOf(called)?.split_left_delta_e00).toBe(split);
  });

  it("is not asked for where the lights do not fight", () => {
    const owned = owning(blue("b", 0.9));
    expect(decisionsFor(owned).lampFilter).toBeDefined();
    const [lamp] = owned.lamps;
    const others: Record<string, Scene> = {
      daylight_only: { ...owned, lamps: [] },
      lamps_only: { ...owned, daylight_basis: "none" },
      lamps_lead: { ...owned, lamps: [{ ...lamp, flux_lm: 400 * lamp.flux_lm }] },
      daylight_leads: { ...owned, lamps: [{ ...lamp, flux_lm: lamp.flux_lm / 400 }] },
    };
    for (const [verdict, scene] of Object.entries(others)) {
      const { middle, lampFilter } = decisionsFor(scene);
      expect(middle.verdict).toBe(verdict);
      expect(lampFilter).toBeUndefined();
    }
  });
});

describe("what is done with the lamps", () => {
  const owned = { item: blue("b", 0.9), split_left_delta_e00: 2 };

  it("follows what leads, and is asked for where none does", () => {
    const plan = (verdict: typeof fighting.verdict) =>
      planLamps({ ...fighting, verdict }, () => "lamps_with_filter");
    expect(plan("daylight_only")).toBe("none");
    expect(plan("lamps_only")).toBe("lamps_only");
    expect(plan("lamps_lead")).toBe("lamps_lead");
    expect(plan("daylight_leads")).toBe("daylight_leads");
    expect(plan("lights_fight")).toBe("lamps_with_filter");
  });

  it("puts the filter on every lamp, takes lamps out that are off, and leaves others as they are", () => {
    const scene: Scene = { ...owning(), lamps: [TWO_LAMPS, { ...TWO_LAMPS, flux_lm: 900 }] };
    const filtered = withLampPlan(scene, "lamps_with_filter", owned);
    expect(filtered).toStrictEqual({
      ...scene,
      lamps: scene.lamps.map((lamp) => ({ ...lamp, filter_kind: "blue", filter_density: 0.9 })),
    });
    expect(withLampPlan(scene, "lamps_off", undefined)).toEqual({ ...scene, lamps: [] });
    for (const plan of ["lamps_only", "lamps_lead", "daylight_leads"] as const) {
      expect(withLampPlan(scene, plan, owned)).toBe(scene);
    }
    const day = daylightScene("IB", 50, 12);
    expect(withLampPlan(day, "none", undefined)).toBe(day);
  });

  it("puts on a measured filter by its curve, with no kind or density that it does not have", () => {
    const item = measured;
    const [lamp] = withLampPlan(REEF_WITH_LAMPS, "lamps_with_filter", {
      item,
      split_left_delta_e00: 3,
    }).lamps;
    expect(lamp).toStrictEqual({ ...TWO_LAMPS, filter_transmittance: CURVE });
    // What was promised of it is what the lamps then leave.
    const split = mixedLight({ ...REEF_WITH_LAMPS, lamps: [lamp] }).depths[0].split_delta_e00?.likely;
    expect(split).toBeCloseTo(bestOf(measured)?.split_left_delta_e00 ?? Number.NaN, 9);
  });
});
