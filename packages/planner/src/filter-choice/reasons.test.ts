// What is said must be what was computed, and be said where it holds and nowhere else.

import { atNight, gradedScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import type { FilterChoiceAnswer } from "../result/filter-choice.js";
import { filterChoice } from "./filter-choice.js";

const codesOf = ({ reasons }: FilterChoiceAnswer) => reasons.map(({ code }) => code);
const reasonOf = ({ reasons }: FilterChoiceAnswer, code: string) =>
  reasons.find((reason) => reason.code === code);
const parametersOf = (answer: FilterChoiceAnswer, code: string) =>
  (reasonOf(answer, code)?.parameters ?? {}) as Readonly<Record<string, number>>;
const last = <T>(list: readonly T[]): T => list[list.length - 1];
const owning = (filter_kind: "red" | "magenta", filter_density: number) => [
  { id: "mine", item: "lens_filter", filter_kind, filter_density } as const,
];

describe("why a filter is mounted", () => {
  it("red: what it earns, that it adds no red, and the trade's rule for blue water", () => {
    const answer = filterChoice(gradedScene("IB", 45, 5, 18));
    const deepest = last(answer.depths);
    expect(answer.filter_kind).toBe("red");
    expect(answer.reasons[0].code).toBe("filter_earns");
    expect(parametersOf(answer, "filter_earns")).toEqual({
      filter: expect.objectContaining({ kind: "red", density: answer.filter_density }),
      min_m: 5,
      max_m: 18,
      with_e: answer.colour_error_delta_e00.likely,
      without_e: answer.colour_error_without_delta_e00.likely,
    });
    expect(parametersOf(answer, "filter_adds_no_red")).toEqual({
      depth_m: 18,
      with_share: deepest.advised_red_signal_above_600_nm_share,
      without_share: deepest.without_red_signal_above_600_nm_share,
    });
    expect(reasonOf(answer, "filter_trade_rule_blue")?.basis).toBe("common_practice");
    expect(codesOf(answer)).not.toContain("filter_trade_rule_green");
    expect(codesOf(answer)).not.toContain("no_filter_earns");
    expect(codesOf(answer)).not.toContain("part_would_gain");
    expect(last(codesOf(answer).filter((code) => code.startsWith("filter_")))).toBe("filter_shape_assumed");
  });

  it("magenta: the trade's rule for green water, and not that for blue", () => {
    const answer = filterChoice(gradedScene("3C", 50, 8));
    expect(answer.filter_kind).toBe("magenta");
    expect(codesOf(answer)).toContain("filter_trade_rule_green");
    expect(codesOf(answer)).not.toContain("filter_trade_rule_blue");
    expect(codesOf(answer)).toContain("filter_adds_no_red");
  });

  it("which part of a range it serves, where the rest would do better without and the mount does not change", () => {
    const scene = gradedScene("IB", 55, 1, 15);
    const fixed = filterChoice(scene);
    expect(fixed.filter_kind).toBe("red");
    const served = { from_m: fixed.serves_min_depth_m, to_m: fixed.serves_max_depth_m };
    expect(served.from_m).toBeGreaterThan(1);
    expect(parametersOf(fixed, "serves_part_of_range")).toEqual(served);
    expect(codesOf(fixed)).not.toContain("change_at_depth");
    const flip = filterChoice({ ...scene, filter_change_underwater: "flip" });
    expect(parametersOf(flip, "change_at_depth")).toEqual({
      from_m: flip.serves_min_depth_m,
      to_m: flip.serves_max_depth_m,
    });
    expect(codesOf(flip)).not.toContain("serves_part_of_range");
    // In green water it is the deep end that does better without.
    const upper = filterChoice(gradedScene("1C", 50, 2, 24));
    expect(upper.serves_min_depth_m).toBe(2);
    expect(upper.serves_max_depth_m).toBeLessThan(24);
    expect(parametersOf(upper, "serves_part_of_range")).toEqual({
      from_m: 2,
      to_m: upper.serves_max_depth_m,
    });
    const whole = codesOf(filterChoice(gradedScene("IB", 45, 8, 12)));
    expect(whole).not.toContain("serves_part_of_range");
    expect(whole).not.toContain("change_at_depth");
  });

  it("where it brings the balance into reach, and from where on there is none without it", () => {
    const answer = filterChoice(gradedScene("IB", 45, 5, 18));
    const out = answer.depths.filter((d) => !d.without_balance_in_reach);
    const reached = answer.depths.filter((d) => d.advised_balance_in_reach);
    expect(parametersOf(answer, "filter_brings_balance_into_reach")).toMatchObject({
      depth_m: out[0].depth_m,
      deepest_m: 18,
      reach_from_m: reached[0]?.depth_m,
      reach_to_m: last(reached)?.depth_m,
    });
    expect(parametersOf(answer, "filter_brings_balance_into_reach")["residual_stops"]).toBeGreaterThan(0);
    expect(codesOf(answer)).not.toContain("balance_out_of_reach");
    expect(codesOf(answer)).not.toContain("balance_in_reach_without");
  });
});

it("a filter that brings the balance closer, and nowhere into reach, comes with no depths of a reach", () => {
  const phone = {
    camera_class: "phone",
    white_balance_max_cct_K: 8000,
    white_balance_max_duv: 0.02,
  } as const;
  const automatic = { white_balance_mode: "auto", exposure_mode: "auto", finish: "in_camera" } as const;
  const answer = filterChoice({ ...gradedScene("IB", 45, 5, 12), ...phone, ...automatic });
  expect(answer.depths.filter((d) => d.advised_balance_in_reach)).toEqual([]);
  expect(Object.keys(parametersOf(answer, "filter_brings_balance_into_reach"))).toEqual([
    "depth_m",
    "deepest_m",
    "residual_stops",
  ]);
});

describe("why none is mounted", () => {
  it("none earns its place: by how much the best of them would change the error, and what it takes", () => {
    const answer = filterChoice({ ...gradedScene("IB", 45, 1.5), kit: owning("magenta", 0.6) });
    expect(answer.filter_kind).toBe("none");
    expect(answer.reasons[0].code).toBe("no_filter_earns");
    const { best_change, worthwhile, best } = parametersOf(answer, "no_filter_earns");
    expect(worthwhile).toBe(0.5);
    expect(best).toEqual({ kind: "magenta", density: 0.6, id: "mine" });
    expect(best_change).toBeGreaterThan(-0.5);
    // The only filter is also the runner-up.
    const { colour_error_delta_e00 } = answer.runner_up;
    expect(best_change).toBeCloseTo(
      colour_error_delta_e00.likely - answer.colour_error_without_delta_e00.likely,
      9,
    );
    for (const code of ["filter_adds_no_red", "filter_trade_rule_blue", "filter_trade_rule_green"]) {
      expect(codesOf(answer)).not.toContain(code);
    }
  });

  it("none is owned", () => {
    const answer = filterChoice({ ...gradedScene("IB", 45, 10), kit: [] });
    expect(answer.reasons[0].code).toBe("no_filter_owned");
    expect(codesOf(answer)).not.toContain("no_filter_earns");
  });

  it("lamps are the only light: of their temperature where it is known", () => {
    const night = (lamp: object) =>
      filterChoice({ ...atNight(gradedScene("IB", 45, 15)), lamps: [{ ...TWO_LAMPS, ...lamp }] });
    const { cct_K: _, ...unnamed } = TWO_LAMPS;
    const warm = night({ cct_K: 3200 });
    expect(warm.reasons[0].code).toBe("lamps_are_the_only_light");
    expect(warm.reasons[0].parameters).toEqual({ lamp: { cct_K: 3200 } });
    const led = filterChoice({
      ...atNight(gradedScene("IB", 45, 15)),
      lamps: [{ ...unnamed, led: "LED-B4" }],
    });
    // A lamp that names its LED has a known spectrum: what a filter gains under it is its own, and told as by day.
    expect(led.reasons[0].code).toBe(
      led.filter_kind === "none" ? "lamps_are_the_only_light" : "filter_earns",
    );
    // A lamp too far away leaves more than an error of 6, and there is one already.
    const far = filterChoice({
      ...atNight(gradedScene("IB", 45, 15)),
      subject_distance_m: 3,
      lamps: [{ ...TWO_LAMPS, flux_lm: 100, distance_m: 3 }],
    });
    expect(far.colour_error_delta_e00.likely).toBeGreaterThan(6);
    expect(codesOf(far)).not.toContain("only_lamps_would_help");
    // Light that is short or to spare, and help from lamps, are said of daylight.
    for (const code of [
      "light_to_spare",
      "light_has_run_out",
      "light_is_too_much",
      "only_lamps_would_help",
    ]) {
      expect(codesOf(warm)).not.toContain(code);
    }
  });

  it("the part of a range that would gain is named by its ends and kind", () => {
    const answer = filterChoice(gradedScene("5C", 40, 3, 16));
    const gaining = answer.depths.filter((d) => d.best_filter_kind !== "none");
    expect(gaining.length).toBeGreaterThan(0);
    expect(parametersOf(answer, "part_would_gain")).toEqual({
      kind: gaining[0].best_filter_kind,
      from_m: gaining[0].depth_m,
      to_m: last(gaining).depth_m,
    });
    expect(codesOf(filterChoice(gradedScene("IB", 45, 1.5)))).not.toContain("part_would_gain");
    // Where none does best is known, but nothing is mounted that could serve a part, or be too dense.
    expect(answer.serves_min_depth_m).toBeGreaterThan(3);
    expect(codesOf(answer)).not.toContain("serves_part_of_range");
    expect(codesOf(answer)).not.toContain("denser_gains_nothing_below");
  });

  it("the camera balances without, or what stays out of reach", () => {
    const easy = filterChoice(gradedScene("IB", 45, 1.5));
    expect(easy.depths[0].without_balance_in_reach).toBe(true);
    expect(codesOf(easy)).toContain("balance_in_reach_without");
    const hard = filterChoice({ ...gradedScene("IB", 45, 5, 18), kit: [] });
    const out = hard.depths.filter((d) => !d.without_balance_in_reach);
    expect(parametersOf(hard, "balance_out_of_reach")).toMatchObject({
      depth_m: out[0].depth_m,
      deepest_m: 18,
    });
    expect(codesOf(hard)).not.toContain("filter_brings_balance_into_reach");
  });
});

describe("the density that is best", () => {
  /** The best density of the advised kind, depth by depth: none where another kind or none is best. */
  const bestOf = ({ filter_kind, depths }: FilterChoiceAnswer) =>
    depths.map((d) => (d.best_filter_kind === filter_kind ? (d.best_filter_density ?? 0) : 0));

  it("is told to fall again where light runs out: down to where it rises, and how far", () => {
    // Blue water under a low sun, and green water, both deeper than their red reaches.
    for (const scene of [gradedScene("IB", 20, 5, 25), gradedScene("1C", 50, 3, 16)]) {
      const answer = filterChoice(scene);
      const densities = bestOf(answer);
      const { depth_m, density } = parametersOf(answer, "denser_gains_nothing_below");
      const peak = answer.depths.findIndex((d) => d.depth_m === depth_m);
      expect(densities[peak]).toBe(density);
      expect(Math.max(...densities)).toBe(density);
      expect(peak).toBeGreaterThan(0);
      expect(peak).toBeLessThan(densities.length - 1);
      // Up to there it rises, from there on it does not come back.
      for (let d = 0; d < peak; d++) expect(densities[d]).toBeLessThan(density);
      expect(last(densities)).toBeLessThanOrEqual(density - 0.1);
    }
  });

  it("is not told to fall where it rises to the end, or by less than the search resolves", () => {
    const rising = filterChoice(gradedScene("IB", 60, 3, 10));
    expect(last(bestOf(rising))).toBe(Math.max(...bestOf(rising)));
    const level = filterChoice(gradedScene("IB", 50, 5, 22));
    expect(last(bestOf(level))).toBeLessThan(Math.max(...bestOf(level)));
    expect(last(bestOf(level))).toBeGreaterThanOrEqual(Math.max(...bestOf(level)) - 0.1);
    for (const answer of [rising, level]) {
      expect(codesOf(answer)).not.toContain("denser_gains_nothing_below");
    }
  });
});
