// What brings each step on dry land, and the figures that it is told with.

import { BRIGHT_REEF, daylightScene, NIGHT_WRECK, OUTER_REEF_MORNING } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import type { KitItem } from "../../scene/scene.js";
import { worseBelow } from "../below.js";
import { decided, FLIPPED, parametersIn, toldBy } from "../decided.test-support.js";
import { rankOf } from "../ranks.js";
import { beforeDive } from "./before.js";

const codes = (...of: Parameters<typeof beforeDive>) => beforeDive(...of).map(({ code }) => code);
const reef = decided(OUTER_REEF_MORNING);
const SHALLOW = daylightScene("IB", 45, 1.5);

describe("before the dive", () => {
  it("the filter is mounted, with the error that it leaves and what it costs", () => {
    expect(toldBy(beforeDive(reef))).toEqual([
      ["before_dive", "mount_filter", undefined],
      ["before_dive", "set_frame", undefined],
    ]);
    expect(parametersIn(beforeDive(reef), "mount_filter")).toEqual({
      filter: reef.filterNamed,
      with_e: reef.filter.colour_error_delta_e00.likely,
      without_e: reef.filter.colour_error_without_delta_e00.likely,
      loss_stops: reef.filter.filter_loss_stops.likely,
      below: worseBelow(reef),
    });
    // What is computed and what is habit are told apart.
    expect(beforeDive(reef).map(({ basis }) => basis)).toEqual(["computed", "common_practice"]);
  });

  it("what it leaves is told from where on it ranks worse at the deep end, be it the chart or a grey card", () => {
    const { colour_error_delta_e00: over, depths } = reef.filter;
    const below = parametersIn(beforeDive(reef), "mount_filter")["below"] as ReturnType<typeof worseBelow>;
    const deepest = depths.at(-1);
    expect(rankOf(over.likely)).toBeLessThan(rankOf(below?.error ?? 0));
    expect(below?.error).toBeGreaterThanOrEqual(deepest?.advised_colour_error_delta_e00 ?? Number.NaN);
    for (const { depth_m, advised_colour_error_delta_e00 } of depths) {
      if (depth_m <= (below?.from_m ?? 0) - 1)
        expect(rankOf(advised_colour_error_delta_e00)).toBeLessThanOrEqual(rankOf(over.likely));
    }
    // At one depth there is nothing below.
    expect(parametersIn(beforeDive(decided(daylightScene("IB", 45, 12))), "mount_filter")).not.toHaveProperty(
      "below",
    );
  });

  it("a filter that is changed is carried for where it serves, on its mount", () => {
    const flipped = decided(FLIPPED);
    const { top_m: from_m, bottom_m: to_m } = flipped.legs[1];
    expect(codes(flipped)[0]).toBe("carry_filter");
    expect(parametersIn(beforeDive(flipped), "carry_filter")).toMatchObject({
      from_m,
      to_m,
      mount: "flip",
    });
  });

  it("no filter is told with the error without one, or for the lamps that make the light", () => {
    const shallow = decided(SHALLOW);
    expect(codes(shallow)[0]).toBe("no_filter");
    expect(parametersIn(beforeDive(shallow), "no_filter")).toEqual({
      error: shallow.filter.colour_error_without_delta_e00.likely,
    });
    for (const lampPlan of ["lamps_only", "lamps_lead"] as const) {
      expect(codes({ ...shallow, lampPlan })[0]).toBe("no_filter_for_lamps");
    }
    for (const lampPlan of ["lamps_off", "lamps_with_filter", "daylight_leads"] as const) {
      expect(codes({ ...shallow, lampPlan })[0]).toBe("no_filter");
    }
  });

  it("neutral density is mounted, or carried, where the plan has it", () => {
    const bright = decided(BRIGHT_REEF);
    const { neutral } = bright.exposure;
    expect(parametersIn(beforeDive(bright), "neutral_density")).toEqual({
      stops: neutral?.excess_stops,
      density: neutral?.density,
      mount: "none",
      stays: true,
    });
    expect(codes(reef)).not.toContain("neutral_density");
  });

  it("what the lens has is kept or taken off by its name", () => {
    const filter = { kind: "green", density: 0.6 } as const;
    const given = (kept: boolean) => beforeDive({ ...reef, mounted: { filter, kept } });
    expect(parametersIn(given(false), "mount_filter")).toMatchObject({ instead_of: filter });
    expect(given(true)[0].code).toBe("keep_filter");
  });

  it("what the lamps have is kept, taken off or replaced by its name", () => {
    const filter = { kind: "blue", density: 0.9 } as const;
    const night = decided(NIGHT_WRECK);
    expect(codes({ ...night, fitted: { filter, kept: false } })).toContain("bare_lamps");
    const day = { ...night, lampPlan: "daylight_leads" as const };
    expect(codes({ ...day, fitted: { filter, kept: true } })).toContain("keep_lamp_filters");
  });

  it("the frame is set as it is filmed", () => {
    expect(parametersIn(beforeDive(reef), "set_frame")).toEqual({ exposure: { shutter_s: 1 / 50 }, bits: 8 });
  });

  it("filters go on the lamps where the plan has them, named as they are owned", () => {
    const night = decided(NIGHT_WRECK);
    const filtered = (item: KitItem) => ({
      ...night,
      lampPlan: "lamps_with_filter" as const,
      lampFilter: { item, split_left_delta_e00: 2.5 },
    });
    const blue = filtered({ id: "soft", item: "lamp_filter", filter_kind: "blue", filter_density: 0.9 });
    expect(parametersIn(beforeDive(blue), "filter_lamps")).toEqual({
      filter: { kind: "blue", density: 0.9, id: "soft" },
      left: 2.5,
    });
    // One that is known by its curve alone is called by what it is like.
    const filter_transmittance = [
      { wavelength_nm: 550, transmittance: 0.9 },
      { wavelength_nm: 620, transmittance: 0.3 },
    ];
    const measured = filtered({ id: "mine", item: "lamp_filter", filter_transmittance });
    expect(parametersIn(beforeDive(measured), "filter_lamps")).toMatchObject({
      filter: { kind: "blue", id: "mine" },
    });
    expect(codes({ ...blue, lampPlan: "lamps_off" })).not.toContain("filter_lamps");
    expect(codes({ ...blue, lampFilter: undefined })).not.toContain("filter_lamps");
  });
});
