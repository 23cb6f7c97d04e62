// Guards what each decision is taken on: lamps as planned, then the filter, then the legs.

import { NIGHT_WRECK, OUTER_REEF_MORNING, REEF_WITH_LAMPS, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { filterChoice } from "../filter-choice/filter-choice.js";
import { mixedLight } from "../mixed-light/mixed-light.js";
import type { KitItem, Scene } from "../scene/scene.js";
import { decisionsFor } from "./decisions.js";

const BLUE: KitItem = { id: "soft", item: "lamp_filter", filter_kind: "blue", filter_density: 0.9 };
const RED: KitItem = { id: "red", item: "lens_filter", filter_kind: "red", filter_density: 1.2 };
const flat = [400, 700].map((wavelength_nm) => ({ wavelength_nm, transmittance: 0.5 }));

describe("the decisions for a dive", () => {
  it("judge the lamps in the middle of the range, or at its one depth", () => {
    const range = decisionsFor({ ...REEF_WITH_LAMPS, min_depth_m: 6, max_depth_m: 14 });
    expect(range.middle.depth_m).toBe(10);
    expect(range.middle).toBe(range.mixed.depths[3]);
    const single = decisionsFor(REEF_WITH_LAMPS);
    expect(single.middle).toBe(single.mixed.depths[0]);
  });

  it("name the filter as it is owned, or by kind and density", () => {
    const { filter, filterNamed } = decisionsFor(OUTER_REEF_MORNING);
    expect(filterNamed).toMatchObject({ kind: "red", density: filter.filter_density });
    // One to be bought is named by what is sold: tenths, in the band that does as well.
    const { from = 0, to = 0 } = filterNamed.shelf ?? {};
    expect([from * 10, to * 10].map((tenths) => tenths - Math.round(tenths))).toEqual([
      expect.closeTo(0),
      expect.closeTo(0),
    ]);
    expect(Math.abs(from - (filter.filter_density ?? 0))).toBeLessThanOrEqual(0.1);
    const kit: KitItem[] = [{ id: "r45", item: "lens_filter", filter_kind: "red", filter_density: 0.45 }];
    const owned = decisionsFor({ ...OUTER_REEF_MORNING, kit });
    expect(owned.filterNamed).toEqual({ kind: "red", density: 0.45, id: "r45" });
    expect(decisionsFor({ ...OUTER_REEF_MORNING, kit: [] }).filterNamed).toEqual({ kind: "none" });
  });

  it("film with the advised filter on the lens, and with none of what was given", () => {
    const given = { filter_kind: "magenta", filter_density: 1.5, filter_transmittance: flat } as const;
    const { filmed, filter } = decisionsFor({ ...OUTER_REEF_MORNING, ...given });
    expect([filmed.filter_kind, filmed.filter_density]).toEqual(["red", filter.filter_density]);
    expect(filmed).not.toHaveProperty("filter_transmittance");
    const none = decisionsFor({ ...OUTER_REEF_MORNING, ...given, kit: [] }).filmed;
    for (const field of Object.keys(given)) expect(none).not.toHaveProperty(field);
  });

  it("film through the measured curve of a filter that is owned with one", () => {
    // Red passes, green and blue are held back.
    const curve = [400, 560, 600, 700].map((wavelength_nm) => ({
      wavelength_nm,
      transmittance: wavelength_nm < 600 ? 0.2 : 0.95,
    }));
    const mine: KitItem = {
      id: "mine",
      item: "lens_filter",
      filter_kind: "red",
      filter_transmittance: curve,
    };
    const other: KitItem = {
      id: "other",
      item: "lens_filter",
      filter_kind: "neutral",
      filter_transmittance: flat,
    };
    const { filmed, filter } = decisionsFor({ ...OUTER_REEF_MORNING, kit: [other, mine] });
    expect(filter.filter_id).toBe("mine");
    expect(filmed.filter_transmittance).toBe(curve);
    expect(filmed).not.toHaveProperty("filter_kind");
    expect(filmed).not.toHaveProperty("filter_density");
  });

  it("choose the filter for the lamps as they are planned: off, or behind theirs", () => {
    const off = decisionsFor(REEF_WITH_LAMPS);
    expect(off.lampPlan).toBe("lamps_off");
    expect(off.filmed.lamps).toEqual([]);
    const choice = filterChoice({ ...REEF_WITH_LAMPS, lamps: [] });
    // A plan has the filter alone, not what other finishes would choose.
    const { reasons: _, cautions: __, finish: ___, other_finishes: ____, ...figures } = choice;
    expect(off.filter).toMatchObject(figures);
    const behind = decisionsFor({ ...REEF_WITH_LAMPS, kit: [RED, BLUE] });
    expect([behind.lampPlan, behind.lampFilter?.item]).toEqual(["lamps_with_filter", BLUE]);
    expect(behind.filmed.lamps[0]).toEqual({ ...TWO_LAMPS, filter_kind: "blue", filter_density: 0.9 });
  });

  it("count the light of the lamps as it is planned: less behind their filter", () => {
    const bare = decisionsFor(NIGHT_WRECK);
    expect(bare.lampLight_lx).toBe(bare.middle.lamp_illuminance_lx.likely);
    const scene: Scene = { ...REEF_WITH_LAMPS, kit: [RED, BLUE] };
    const { lampLight_lx, middle } = decisionsFor(scene);
    const filtered = { ...TWO_LAMPS, filter_kind: "blue", filter_density: 0.9 } as const;
    const [depth] = mixedLight({ ...scene, lamps: [filtered] }).depths;
    expect(lampLight_lx).toBe(depth.lamp_illuminance_lx.likely);
    expect(lampLight_lx).toBeLessThan(middle.lamp_illuminance_lx.likely);
  });

  it("know how deep red goes in daylight, and ask not where lamps are lit", () => {
    const { red } = decisionsFor(OUTER_REEF_MORNING);
    expect(red?.gone_m).toBeGreaterThan(red?.acceptable_m ?? Number.NaN);
    expect(decisionsFor(REEF_WITH_LAMPS).red).toBeDefined();
    expect(decisionsFor(NIGHT_WRECK).red).toBeUndefined();
    expect(decisionsFor({ ...REEF_WITH_LAMPS, kit: [RED, BLUE] }).red).toBeUndefined();
  });
});
