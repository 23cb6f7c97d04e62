// Figures of pictures against the answers that they belong to, which are worked out apart.

import {
  BRIGHT_REEF,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_WITH_LAMPS,
} from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { exposureLoss } from "../exposure-loss/exposure-loss.js";
import { filterChoice } from "../filter-choice/filter-choice.js";
import { mixedLight } from "../mixed-light/mixed-light.js";
import { colourStrip } from "./colour-strip.js";
import { exposureBudget } from "./exposure-budget.js";
import { filterMap } from "./filter-map.js";
import { mixedLightMap } from "./mixed-light-map.js";
import { pictureDepths } from "./picture-depths.js";

describe("a map of filters", () => {
  it.each([OUTER_REEF_MORNING, HARBOUR_WALL_AFTERNOON])("frames what the answer advises", (scene) => {
    const { filter, band, delta_e00, depths_m, densities, max_depth_m } = filterMap(scene);
    const answer = filterChoice(scene);
    expect(filter.kind).toBe(answer.filter_kind);
    expect(band?.from).toBe(answer.filter_density);
    expect(depths_m.at(-1)).toBe(max_depth_m);
    // Without a filter, at the deepest depth, it is the answer's own figure, which is worked out with its bounds.
    const { without_colour_error_delta_e00: without } = answer.depths.at(-1) ?? {};
    expect(delta_e00.at(-1)?.[0]).toBeCloseTo(without ?? Number.NaN, 6);
    for (const row of delta_e00) expect(row).toHaveLength(densities.length);
  });

  it("frames nothing where the answer advises nothing", () => {
    const { band, is_advised } = filterMap(NIGHT_WRECK);
    expect([band, is_advised]).toEqual([undefined, false]);
  });
});

describe("depths of a picture", () => {
  it.each([0.1, 0.3, 1, 1.5, 4.9, 5, 7.3, 18, 40, 100])(
    "down to %d m are apart, and end there",
    (max_depth_m) => {
      const depths = pictureDepths({ max_depth_m });
      expect(depths.at(-1)).toBe(max_depth_m);
      for (let i = 1; i < depths.length; i += 1)
        expect((depths[i] ?? 0) - (depths[i - 1] ?? 0)).toBeGreaterThanOrEqual(0.5 - 1e-9);
      expect(depths[0]).toBeGreaterThan(0);
    },
  );
});

describe("a map of mixed light", () => {
  it("says at the scene's own depth and distance what the answer says, with its ways out", () => {
    const { verdict, ways_out, verdicts, distances_m, depths_m, own_distance_m } =
      mixedLightMap(REEF_WITH_LAMPS);
    const [answer] = mixedLight(REEF_WITH_LAMPS).depths;
    expect(verdict).toBe(answer.verdict);
    expect(ways_out.map(({ code }) => code)).toEqual(answer.ways_out.map(({ code }) => code));
    const row = depths_m.findIndex((depth_m) => depth_m > 12) - 1;
    const column = distances_m.findIndex((distance_m) => distance_m > own_distance_m);
    expect(verdicts[row]?.[column]).toBe(answer.verdict);
  });

  it("has daylight lead far from the lamps in bright shallows, and the lamps alone at night", () => {
    const { verdicts, is_assumed } = mixedLightMap(BRIGHT_REEF);
    expect(is_assumed).toBe(true);
    expect(verdicts[2]?.at(-1)).toBe("daylight_leads");
    expect(new Set(mixedLightMap(NIGHT_WRECK).verdicts.flat())).toEqual(new Set(["lamps_only"]));
  });
});

describe("a strip of colours", () => {
  const strip = colourStrip(OUTER_REEF_MORNING);

  it("begins near the truth once the white balance is set, and loses red on the way down", () => {
    const [top, bottom] = [strip.balanced.colours[0], strip.balanced.colours.at(-1)];
    expect(top?.red[0] ?? 0).toBeGreaterThan(0.8 * strip.truth.red[0]);
    expect(bottom?.red[0] ?? 1).toBeLessThan(0.3 * strip.truth.red[0]);
  });

  it("is nearer the truth with the advised filter where it is filmed deepest", () => {
    expect(strip.filtered.delta_e00).toBeLessThan(strip.balanced.delta_e00);
    expect(strip.balanced.delta_e00).toBeLessThan(strip.daylight.delta_e00);
  });
});

describe("a budget of exposure", () => {
  it("adds up to the answer's total at either end", () => {
    const { depths } = exposureBudget(HARBOUR_WALL_AFTERNOON);
    const answer = exposureLoss(HARBOUR_WALL_AFTERNOON).depths;
    expect(depths.map(({ depth_m }) => depth_m)).toEqual([4, 12]);
    for (const [place, { losses, total }] of depths.entries()) {
      const sum = losses.reduce((all, { stops }) => all + stops.likely, 0);
      expect(sum).toBeCloseTo(total?.likely ?? Number.NaN, 9);
      expect(total).toEqual(answer.at(-place)?.total_loss_stops);
    }
  });

  it("counts no daylight at night, and no filter where none is on the lens", () => {
    const [night] = exposureBudget(NIGHT_WRECK).depths;
    expect(night?.losses.map(({ at }) => at)).toEqual(["distance", "port"]);
    expect(night).not.toHaveProperty("total");
  });
});
