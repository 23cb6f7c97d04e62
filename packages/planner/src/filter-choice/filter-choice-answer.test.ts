// What an answer has, and what a measured curve makes of it.

import { gradedScene } from "@sunfathom/fixtures/scenes";
import { filterTransmittance, illuminance_lx, multiply, WAVELENGTHS_NM } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, FILTER_CAUSES } from "../uncertainty/causes.js";
import { normalCdf, Z90 } from "../uncertainty/normal.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { worthwhileFor } from "./decide.js";
import { filterChoice } from "./filter-choice.js";
import { judge } from "./merits.js";

/** What a filter must gain where a grade follows. */
const WORTHWHILE = worthwhileFor("matched");
describe("a measured curve of an owned filter", () => {
  const scene = gradedScene("IB", 45, 10);
  const owned = (shift_nm: number) =>
    filterChoice({
      ...scene,
      kit: [
        {
          id: "mine",
          item: "lens_filter",
          filter_kind: "red",
          filter_transmittance: Array.from(
            filterTransmittance("red", 1.05, { shift_nm }),
            (transmittance, i) => ({
              wavelength_nm: WAVELENGTHS_NM[i],
              transmittance,
            }),
          ),
        },
      ],
    });

  it("counts as measured: the nominal shape's own curve gives the nominal figure, another edge another one", () => {
    const nominal = filterChoice({
      ...scene,
      kit: [{ id: "mine", item: "lens_filter", filter_kind: "red", filter_density: 1.05 }],
    });
    expect(nominal.filter_id).toBe("mine");
    expect(owned(0).colour_error_delta_e00.likely).toBeCloseTo(nominal.colour_error_delta_e00.likely, 10);
    expect(
      Math.abs(owned(40).colour_error_delta_e00.likely - owned(0).colour_error_delta_e00.likely),
    ).toBeGreaterThan(0.02);
    // Nothing is left in doubt about a measured edge.
    const causes = (answer: typeof nominal) => answer.uncertainty.map((u) => u.code);
    expect(causes(nominal)).toContain("filter_edge");
    expect(causes(owned(0))).not.toContain("filter_edge");
  });
});

describe("the answer", () => {
  const TURNING: Scene = gradedScene("IB", 55, 1, 15);
  const flip = (scene: Scene): Scene => ({ ...scene, filter_change_underwater: "flip" });

  it("names the part of the range that a filter serves, and where to change where the mount lets one", () => {
    const fixed = filterChoice(TURNING);
    expect(fixed.serves_min_depth_m).toBeGreaterThan(1);
    expect(fixed.serves_max_depth_m).toBe(15);
    expect(fixed).not.toHaveProperty("change_depths_m");
    const changing = filterChoice(flip(TURNING));
    expect(changing.serves_max_depth_m).toBe(15);
    // The deep end of the range is no change.
    expect(changing.change_depths_m).toEqual([changing.serves_min_depth_m]);
    // What is changed in time leaves less error than either way throughout.
    expect(changing.colour_error_delta_e00.likely).toBeLessThan(fixed.colour_error_delta_e00.likely);
    const whole = filterChoice(flip(gradedScene("IB", 45, 8, 12)));
    expect([whole.serves_min_depth_m, whole.serves_max_depth_m]).toEqual([8, 12]);
    expect(whole).not.toHaveProperty("change_depths_m");
  });

  it("names for no filter the part in which the best filter does no better, and nothing to change", () => {
    const none = filterChoice(gradedScene("5C", 40, 3, 16));
    expect(none.filter_kind).toBe("none");
    expect(none.serves_min_depth_m).toBeGreaterThan(3);
    expect(none).not.toHaveProperty("change_depths_m");
    // With nothing to choose from it serves the whole.
    const bare = filterChoice({ ...flip(gradedScene("IB", 45, 5, 12)), kit: [] });
    expect([bare.serves_min_depth_m, bare.serves_max_depth_m]).toEqual([5, 12]);
    expect(bare).not.toHaveProperty("change_depths_m");
  });

  it("calls the runner-up better with the probability of a normal spread of what it loses by, its price counted", () => {
    for (const scene of [2.5, 3, 3.5, 4, 6].map((depth) => gradedScene("IB", 50, depth))) {
      const { filter_kind, runner_up, verdict } = filterChoice(scene);
      const { loses_by_delta_e00: e, probability_better } = runner_up;
      // 10th and 90th percentile lie 1.2816 standard deviations away.
      const sigma = (e.high - e.low) / (2 * 1.2816);
      const price = (kind: string) => (kind === "none" ? 0 : WORTHWHILE);
      const gap = e.likely + price(runner_up.filter_kind) - price(filter_kind);
      expect(gap).toBeGreaterThanOrEqual(0);
      expect(probability_better).toBeCloseTo(normalCdf(-gap / sigma), 1);
      expect(verdict).toBe(probability_better >= 0.25 ? "near_tie" : "clear");
    }
    const [near, far] = [3.5, 10].map((depth) => filterChoice(gradedScene("IB", 50, depth)));
    expect(near.runner_up.probability_better).toBeGreaterThan(far.runner_up.probability_better);
    expect(far.verdict).toBe("clear");
  });

  it("takes of the light in the middle of the range what the filter takes there, in luminance; none takes none", () => {
    const scene = gradedScene("IB", 45, 5, 18);
    const { filter_kind, filter_density = 0, filter_loss_stops } = filterChoice(scene);
    if (filter_kind !== "red") throw new Error("not red");
    const { subject } = stageAt(underwater(conditionsOf(scene), NOMINAL), 11.5);
    const seen = multiply(subject, filterTransmittance("red", filter_density));
    expect(filter_loss_stops.likely).toBeCloseTo(
      Math.log2(illuminance_lx(subject) / illuminance_lx(seen)),
      9,
    );
    const { filter_loss_stops: without } = filterChoice(gradedScene("IB", 45, 1.5));
    expect(without).toEqual({ low: 0, likely: 0, high: 0 });
  });

  it("has a density for a filter that has one: not for none, nor for a measured curve, at each depth either", () => {
    const none = filterChoice(gradedScene("IB", 45, 1.5));
    for (const field of ["filter_density", "filter_id", "neutral_density"])
      expect(none).not.toHaveProperty(field);
    expect(none.depths[0]).not.toHaveProperty("best_filter_density");
    const red = filterChoice(gradedScene("IB", 45, 10));
    expect(red.filter_density).toBeGreaterThan(0);
    expect(red).not.toHaveProperty("filter_id");
    expect(red.depths[0].best_filter_density).toBeGreaterThan(0);
    expect(red.depths[0].best_filter_kind).toBe("red");
  });

  it("warns of what it advises: a filter that cannot be changed is mounted on land", () => {
    const codes = (scene: Scene) => filterChoice(scene).cautions.map(({ code }) => code);
    expect(codes(gradedScene("IB", 45, 10))).toContain("filter_on_dry_land");
    expect(codes(flip(gradedScene("IB", 45, 10)))).toContain("filter_flip_practised");
    expect(codes(gradedScene("IB", 45, 1.5))).not.toContain("filter_on_dry_land");
  });

  it("rests on the light's sources and its own, and its doubt is that of the choice, or of the error where there is none", () => {
    const answer = filterChoice(gradedScene("IB", 45, 10));
    expect(answer.sources).toEqual(expect.arrayContaining(["jerlov_1976", "filter_merit", "filter_shapes"]));
    expect(new Set(answer.sources).size).toBe(answer.sources.length);
    const none = filterChoice({ ...gradedScene("IB", 45, 10), kit: [] });
    expect(none.uncertainty.length).toBeGreaterThan(0);
    expect(answer.uncertainty.map(({ code }) => code)).toContain("filter_edge");
    expect(none.uncertainty.map(({ code }) => code)).not.toContain("filter_edge");
  });

  it("shares its doubt by what moves the runner-up against the choice, not by what moves both alike", () => {
    const scene = gradedScene("IB", 45, 10);
    const conditions = conditionsOf(scene);
    const { filter_kind, filter_density, runner_up, uncertainty } = filterChoice(scene);
    const candidates = [
      { kind: filter_kind, density: filter_density ?? 0 },
      { kind: runner_up.filter_kind, density: runner_up.filter_density ?? 0 },
    ];
    const errors = (nuisance: Nuisance) =>
      judge(conditions, nuisance, [10], candidates).map(({ merits }) => merits[0].delta_e00);
    const [advised, second] = errors(NOMINAL);
    const shifts = [...causesOf(conditions), ...FILTER_CAUSES].map((cause) => {
      const runs = [-Z90, Z90].map((z) => errors({ ...NOMINAL, ...cause.shift(z) }));
      return {
        id: cause.code,
        ofChoice: runs.reduce((sum, [a, b]) => sum + (b - a - (second - advised)) ** 2, 0),
        ofError: runs.reduce((sum, [a]) => sum + (a - advised) ** 2, 0),
      };
    });
    const share = (of: "ofChoice" | "ofError", id: string) =>
      (shifts.find((shift) => shift.id === id)?.[of] ?? 0) / shifts.reduce((sum, s) => sum + s[of], 0);
    for (const { code, share: told } of uncertainty) expect(told).toBeCloseTo(share("ofChoice", code), 9);
    // It matters here which of them is told.
    const apart = shifts.map(({ id }) => Math.abs(share("ofChoice", id) - share("ofError", id)));
    expect(Math.max(...apart)).toBeGreaterThan(0.05);
  });
});
