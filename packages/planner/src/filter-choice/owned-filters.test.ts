// The search among what is owned, and with a mount that changes at depth.

import { atNight, gradedScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import type { FilterShape } from "@sunfathom/optics";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import type { FilterChoiceAnswer } from "../result/filter-choice.js";
import type { KitItem, Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { type Candidate, NO_FILTER } from "./candidates.js";
import { costOf, type Scored, worthwhileFor } from "./decide.js";
import { filterChoice } from "./filter-choice.js";
import { judge } from "./merits.js";

/** What a filter must gain where a grade follows. */
const WORTHWHILE = worthwhileFor("matched");
function scored(scene: Scene, candidates: readonly Candidate[], filterShape: FilterShape = {}): Scored[] {
  const judged = judge(conditionsOf(scene), { ...NOMINAL, filterShape }, [scene.min_depth_m], candidates);
  return judged.map(({ candidate, merits }) => ({ candidate, delta_e00: merits[0].delta_e00 }));
}
/** Colour error, and what a filter has to earn. */
const advisedCost = ({ filter_kind, colour_error_delta_e00 }: FilterChoiceAnswer): number =>
  costOf({ kind: filter_kind }, colour_error_delta_e00.likely, WORTHWHILE);
describe("a kit", () => {
  const scene = gradedScene("IB", 45, 10);
  const item = fc.record({
    filter_kind: fc.constantFrom("red" as const, "magenta" as const, "neutral" as const, "blue" as const),
    filter_density: fc.integer({ min: 5, max: 180 }).map((d) => d / 100),
  });
  const kitOf = (filters: readonly Pick<KitItem, "filter_kind" | "filter_density">[]): KitItem[] =>
    filters.map((f, i) => ({ ...f, id: `f${i}`, item: "lens_filter" }));

  it("with one filter more never makes the advice worse (law)", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("I", "II", "1C", "3C", "7C"),
        fc.double({ min: 2, max: 20, noNaN: true }),
        fc.array(item, { maxLength: 4 }),
        item,
        (type, depth, filters, more) => {
          const own = (kit: KitItem[]) => advisedCost(filterChoice({ ...gradedScene(type, 45, depth), kit }));
          expect(own(kitOf([...filters, more]))).toBeLessThanOrEqual(own(kitOf(filters)) + 1e-12);
        },
      ),
      { seed: 11, numRuns: 10 },
    );
  });

  it("is chosen from alone, by its id; free choice is never worse than what is owned", () => {
    const kit = kitOf([
      { filter_kind: "magenta", filter_density: 0.6 },
      { filter_kind: "red", filter_density: 0.6 },
    ]);
    const owned = filterChoice({ ...scene, kit });
    expect(owned.filter_id).toBe("f1");
    expect(owned.filter_density).toBe(0.6);
    expect(advisedCost(filterChoice(scene))).toBeLessThanOrEqual(advisedCost(owned));
  });

  it.each([
    ["that is empty", []],
    [
      "of lamps and lamp filters only",
      [
        { id: "lamp", item: "lamp" },
        { id: "blue", item: "lamp_filter", filter_kind: "blue", filter_density: 0.6 },
      ],
    ],
  ] as [string, KitItem[]][])(
    "%s: nothing to mount, and the reason says how to learn what would serve",
    (_, kit) => {
      const answer = filterChoice({ ...scene, kit });
      expect(answer.filter_kind).toBe("none");
      expect(answer).not.toHaveProperty("filter_id");
      expect(answer.runner_up.probability_better).toBe(0);
      expect(answer.reasons.map(({ code }) => code)).toContain("no_filter_owned");
    },
  );

  it("a filter that no dive here wants stays at home", () => {
    const kit = kitOf([{ filter_kind: "blue", filter_density: 1.2 }]);
    expect(filterChoice({ ...scene, kit }).filter_kind).toBe("none");
  });
});

describe("a mount that changes at depth", () => {
  it.each([
    ["IB", 55, 1, 15],
    ["II", 45, 1, 20],
    ["1C", 45, 3, 24],
    ["3C", 40, 4, 16],
  ] as const)(
    "%s, sun %d, %d to %d m: change inside the range, where with and without are even",
    (type, sun, from, to) => {
      const scene: Scene = { ...gradedScene(type, sun, from, to), filter_change_underwater: "flip" };
      const answer = filterChoice(scene);
      const { filter_kind, filter_density, serves_min_depth_m = 0, serves_max_depth_m = 0 } = answer;
      const changes = answer.change_depths_m ?? [];
      expect(changes.length).toBeGreaterThan(0);
      for (const change of changes) {
        expect(change).toBeGreaterThan(from);
        expect(change).toBeLessThan(to);
        expect([serves_min_depth_m, serves_max_depth_m]).toContain(change);
        const there = { ...scene, min_depth_m: change, max_depth_m: change };
        const [none, filtered] = scored(there, [
          NO_FILTER,
          { kind: filter_kind, density: filter_density ?? 0 },
        ]);
        // Found by interpolation between the depths that were computed.
        expect(Math.abs(none.delta_e00 - filtered.delta_e00)).toBeLessThan(0.2);
      }
      for (const d of answer.depths) {
        const gain = d.without_colour_error_delta_e00 - d.advised_colour_error_delta_e00;
        if (d.depth_m > serves_min_depth_m && d.depth_m < serves_max_depth_m) expect(gain).toBeGreaterThan(0);
        else if (d.depth_m < serves_min_depth_m) expect(gain).toBeLessThanOrEqual(0);
      }
    },
  );

  it("leaves no more error than one filter for the whole range, and names no change where the mount allows none", () => {
    const scene = gradedScene("IB", 55, 1, 15);
    const fixed = filterChoice(scene);
    const flip = filterChoice({ ...scene, filter_change_underwater: "flip" });
    expect(advisedCost(flip)).toBeLessThanOrEqual(advisedCost(fixed));
    expect(fixed).not.toHaveProperty("change_depths_m");
  });

  it("names none where lamps are the only light", () => {
    const night: Scene = { ...atNight(gradedScene("IB", 45, 5, 20)), lamps: [TWO_LAMPS] };
    const answer = filterChoice({ ...night, filter_change_underwater: "clip_on" });
    expect(answer.filter_kind).toBe("none");
    expect(answer).not.toHaveProperty("change_depths_m");
  });
});
