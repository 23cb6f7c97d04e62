// What is said beside why a filter is mounted or none.

import { atNight, BRIGHT_REEF, gradedScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { filterChoiceReasons } from "../../../words/src/en/reasons/filter-choice.js";
import { conditionsOf } from "../light/conditions.js";
import { redTrustedTo_m } from "../light/inelastic.js";
import { underwater } from "../light/underwater.js";
import type { FilterChoiceAnswer } from "../result/filter-choice.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { filterChoice } from "./filter-choice.js";

const codesOf = ({ reasons }: FilterChoiceAnswer) => reasons.map(({ code }) => code);
const reasonOf = ({ reasons }: FilterChoiceAnswer, code: string) =>
  reasons.find((reason) => reason.code === code);
const namedIn = ({ filter_kind: kind, filter_density: density }: FilterChoiceAnswer["runner_up"]) => ({
  kind,
  ...(density === undefined ? {} : { density }),
});
const parametersOf = (answer: FilterChoiceAnswer, code: string) =>
  (reasonOf(answer, code)?.parameters ?? {}) as Readonly<Record<string, number>>;
const owning = (filter_kind: "red" | "magenta", filter_density: number) => [
  { id: "mine", item: "lens_filter", filter_kind, filter_density } as const,
];

describe("what else is said", () => {
  it("is computed, or the trade's and named as such", () => {
    const scenes: Scene[] = [
      gradedScene("IB", 20, 5, 25),
      gradedScene("3C", 50, 8),
      gradedScene("IB", 55, 1, 15),
      { ...gradedScene("IB", 55, 1, 15), filter_change_underwater: "flip" },
      { ...gradedScene("IB", 45, 1.5), kit: owning("magenta", 0.6) },
      { ...gradedScene("IB", 45, 5, 40), kit: [] },
      { ...atNight(gradedScene("IB", 45, 15)), lamps: [TWO_LAMPS] },
      gradedScene("5C", 40, 3, 16),
      { ...BRIGHT_REEF, max_depth_m: 8 },
      { ...gradedScene("5C", 20, 12), max_iso: 1600 },
      gradedScene("IB", 50, 4),
      gradedScene("IB", 50, 28, 42),
      { ...gradedScene("7C", 45, 3), subject_distance_m: 5 },
      { ...gradedScene("I", 50, 22), finish: "in_camera" },
    ];
    const told = new Map(
      scenes.flatMap((scene) => filterChoice(scene).reasons).map(({ code, basis }) => [code, basis]),
    );
    for (const [code, basis] of told) {
      const isTrade = code.startsWith("filter_trade_rule");
      const isJudged = [
        "densities_as_good",
        "densest_tried",
        "no_filter_earns",
        "only_lamps_would_help",
        "filter_shape_assumed",
      ].includes(code);
      expect([code, basis]).toEqual([
        code,
        isTrade ? "common_practice" : isJudged ? "judgement" : "computed",
      ]);
    }
    expect([...told.keys()]).toEqual(expect.arrayContaining(Object.keys(filterChoiceReasons)));
  });

  it("too much light, with the neutral density that takes it, at the shallow end", () => {
    const answer = filterChoice({ ...BRIGHT_REEF, max_depth_m: 8, finish: "matched" });
    const { excess_stops, density, ...at } = parametersOf(answer, "light_is_too_much");
    expect(at).toEqual({ depth_m: 5, iso: 400, f_number: 5.6, metering: "white_card" });
    // A stop is a density of log10 2.
    expect(density).toBeCloseTo(excess_stops * Math.log10(2), 12);
    expect(codesOf(answer)).toContain("colour_filter_as_neutral");
    expect(codesOf(answer)).not.toContain("light_to_spare");
    // Also where the filter that is advised takes enough: it is said of the camera without one.
    const behind = filterChoice({ ...gradedScene("IB", 45, 8), f_number: 5.6 });
    expect(behind.filter_kind).toBe("red");
    expect(behind).not.toHaveProperty("neutral_density");
    expect(codesOf(behind)).toContain("light_is_too_much");
  });

  it("light to spare, or short, at the deep end", () => {
    const spare = filterChoice(gradedScene("IB", 60, 2, 4));
    expect(parametersOf(spare, "light_to_spare")).toMatchObject({ depth_m: 4, iso: 200 });
    expect(codesOf(spare)).not.toContain("light_has_run_out");
    const short = filterChoice({ ...gradedScene("5C", 20, 12), max_iso: 1600 });
    expect(parametersOf(short, "light_has_run_out")).toMatchObject({ depth_m: 12, iso: 1600, f_number: 2.8 });
    expect(parametersOf(short, "light_has_run_out")["short_stops"]).toBeGreaterThan(0);
    expect(codesOf(short)).not.toContain("light_to_spare");
  });

  it("that only lamps would help, from an error of 6 on, where none are", () => {
    for (const scene of [
      gradedScene("5C", 20, 12),
      gradedScene("IB", 60, 4),
      { ...gradedScene("5C", 20, 12), lamps: [TWO_LAMPS] },
      { ...gradedScene("5C", 20, 12), lamps: [{ ...TWO_LAMPS, flux_lm: 100, distance_m: 3 }] },
    ] as Scene[]) {
      const answer = filterChoice(scene);
      const hopeless = answer.colour_error_delta_e00.likely > 6 && scene.lamps.length === 0;
      expect(codesOf(answer).includes("only_lamps_would_help")).toBe(hopeless);
    }
    const answer = filterChoice(gradedScene("5C", 20, 12));
    expect(parametersOf(answer, "only_lamps_would_help")).toEqual({
      error: answer.colour_error_delta_e00.likely,
    });
  });

  it("a near tie, from a probability of a quarter on, with what it is between", () => {
    for (const depth_m of [2.5, 3, 3.5, 4, 10]) {
      const answer = filterChoice(gradedScene("IB", 50, depth_m));
      const { probability_better, loses_by_delta_e00 } = answer.runner_up;
      expect(answer.verdict).toBe(probability_better >= 0.25 ? "near_tie" : "clear");
      expect(codesOf(answer).includes("near_tie")).toBe(answer.verdict === "near_tie");
      if (answer.verdict !== "near_tie") continue;
      expect(parametersOf(answer, "near_tie")).toEqual({
        probability: probability_better,
        runner_up: expect.objectContaining(namedIn(answer.runner_up)),
        loses_by: loses_by_delta_e00.likely,
        worthwhile: 0.5,
      });
    }
  });

  it("that red is not only transmitted, below the depth at which what the water makes itself equals it", () => {
    const scene = gradedScene("IB", 45, 5);
    const trusted_m = redTrustedTo_m(underwater(conditionsOf(scene), NOMINAL)) ?? Number.NaN;
    const to = (max_depth_m: number) => filterChoice({ ...scene, max_depth_m });
    expect(parametersOf(to(trusted_m + 1), "red_not_only_transmitted")).toEqual({ depth_m: trusted_m });
    expect(codesOf(to(trusted_m - 1))).not.toContain("red_not_only_transmitted");
  });
});
