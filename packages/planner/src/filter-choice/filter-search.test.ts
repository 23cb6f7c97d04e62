// The search, not the physics: against brute force, against other shapes of filter, and with what is owned.

import { gradedScene } from "@sunfathom/fixtures/scenes";
import type { FilterShape } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import { mapEach } from "../lists/non-empty.js";
import type { FilterChoiceAnswer } from "../result/filter-choice.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { type Candidate, GRID, NO_FILTER } from "./candidates.js";
import { asGoodWithin, cheapest, costOf, type Scored, worthwhileFor } from "./decide.js";
import { filterChoice } from "./filter-choice.js";
import { judge } from "./merits.js";

/** What a filter must gain where a grade follows. */
const WORTHWHILE = worthwhileFor("matched");
const hundredths = Array.from({ length: 160 }, (_, i) => (i + 1) / 100);
const EVERY_HUNDREDTH: readonly Candidate[] = [
  NO_FILTER,
  ...(["red", "magenta"] as const).flatMap((kind) => hundredths.map((density) => ({ kind, density }))),
];

function scored(scene: Scene, candidates: readonly Candidate[], filterShape: FilterShape = {}): Scored[] {
  const judged = judge(conditionsOf(scene), { ...NOMINAL, filterShape }, [scene.min_depth_m], candidates);
  return judged.map(({ candidate, merits }) => ({ candidate, delta_e00: merits[0].delta_e00 }));
}
/** Colour error, and what a filter has to earn. */
const advisedCost = ({ filter_kind, colour_error_delta_e00 }: FilterChoiceAnswer): number =>
  costOf({ kind: filter_kind }, colour_error_delta_e00.likely, WORTHWHILE);
const AS_GOOD = asGoodWithin("matched");
const cost = ({ candidate, delta_e00 }: Scored): number => costOf(candidate, delta_e00, WORTHWHILE);

describe("the search", () => {
  it.each([
    ["I", 50, 5],
    ["IB", 45, 10],
    ["IB", 50, 3.5],
    ["II", 30, 8],
    ["III", 60, 6],
    ["1C", 45, 6],
    ["3C", 50, 8],
    ["3C", 40, 14],
    ["5C", 40, 4],
    ["7C", 50, 3],
  ] as const)(
    "%s, sun %d, %d m: no density in hundredths of either kind is better by what anyone sees, and none that is as good is weaker",
    (type, sun, depth) => {
      const scene = gradedScene(type, sun, depth);
      const answer = filterChoice(scene);
      const all = scored(scene, EVERY_HUNDREDTH);
      const best = cheapest(all, WORTHWHILE);
      expect(answer.filter_kind).toBe(best.candidate.kind);
      expect(advisedCost(answer)).toBeGreaterThanOrEqual(cost(best) - 1e-9);
      expect(advisedCost(answer)).toBeLessThan(cost(best) + AS_GOOD + 1e-9);
      // Densities are found in steps of 0.05, and the best of them within 1 %.
      const asGood = Math.min(cost(best) + AS_GOOD, cost(all[0]));
      for (const other of all.filter(({ candidate }) => candidate.kind === best.candidate.kind)) {
        if ((other.candidate.density ?? 0) < (answer.filter_density ?? 0) - 0.05)
          expect(cost(other)).toBeGreaterThan(0.99 * asGood);
      }
    },
  );

  it("over a range: no density in twentieths leaves a mean error that is lower by what anyone sees", () => {
    const scene = gradedScene("IB", 40, 5, 18);
    const answer = filterChoice(scene);
    const depths = mapEach(answer.depths, (d) => d.depth_m);
    const twentieths = EVERY_HUNDREDTH.filter((_, i) => i % 5 === 0);
    const errors = judge(conditionsOf(scene), NOMINAL, depths, twentieths).map(
      ({ merits }) => merits.reduce((sum, m) => sum + m.delta_e00, 0) / merits.length,
    );
    expect(answer.colour_error_delta_e00.likely).toBeLessThan(Math.min(...errors) + AS_GOOD);
  });

  it.each([
    ["I", 15],
    ["IA", 15],
    ["IB", 15],
    ["II", 7],
  ] as const)(
    "in blue %s the density does not fall with depth down to a depth of diminishing gain, %d m or deeper; past it, it does not rise",
    (type, from) => {
      const depths = [4, 5, 7, 10, 15, 18, 22, 26, 30, 35];
      const densities = depths.map((depth) => filterChoice(gradedScene(type, 50, depth)).filter_density ?? 0);
      const peak = densities.lastIndexOf(Math.max(...densities));
      expect(depths[peak]).toBeGreaterThanOrEqual(from);
      // Densities are found in steps of 0.05.
      for (let i = 1; i < depths.length; i++) {
        const change = densities[i] - densities[i - 1];
        if (i <= peak) expect(change).toBeGreaterThanOrEqual(-0.05 - 1e-9);
        else expect(change).toBeLessThanOrEqual(0.05 + 1e-9);
      }
    },
  );
});

describe("the depth of diminishing gain", () => {
  const named = (scene: Scene) => {
    const answer = filterChoice(scene);
    const reason = answer.reasons.find((r) => r.code === "denser_gains_nothing_below");
    const { depth_m } = (reason?.parameters ?? {}) as { depth_m?: number };
    return { answer, depth_m };
  };

  it.each([
    ["II", 40],
    ["1C", 16],
  ] as const)(
    "%s to %d m: is named; the best density does not fall down to it, and below it is weaker or none",
    (type, to) => {
      const { answer, depth_m } = named(gradedScene(type, 50, 4, to));
      if (depth_m === undefined) throw new Error("no depth is named");
      const of = (d: FilterChoiceAnswer["depths"][number]) => d.best_filter_density ?? 0;
      const down = answer.depths.filter((d) => d.depth_m <= depth_m).map(of);
      for (let i = 1; i < down.length; i++) expect(down[i]).toBeGreaterThanOrEqual(down[i - 1] - 0.05 - 1e-9);
      const below = answer.depths.filter((d) => d.depth_m > depth_m).map(of);
      expect(below.length).toBeGreaterThan(0);
      for (const density of below) expect(density).toBeLessThanOrEqual(down[down.length - 1]);
      expect(below[below.length - 1]).toBeLessThan(down[down.length - 1] - 0.05);
    },
  );

  it("is not named where density still gains at the deep end", () => {
    expect(named(gradedScene("IB", 50, 4, 12)).depth_m).toBeUndefined();
  });

  it("a range in which no filter pays as a whole names the part in which one would, and there one is advised", () => {
    const { reasons, filter_kind } = filterChoice(gradedScene("5C", 40, 3, 16));
    expect(filter_kind).toBe("none");
    const part = reasons.find(({ code }) => code === "part_would_gain")?.parameters;
    const { from_m, to_m } = part as { from_m: number; to_m: number };
    expect(filterChoice(gradedScene("5C", 40, from_m, to_m)).filter_kind).toBe("magenta");
  });
});

describe("other plausible shapes of filter", () => {
  /** An edge elsewhere, a band narrower or wider: each about one in ten (assumed; filter curves have no standard). */
  const SHAPES: FilterShape[] = [
    { shift_nm: -10 },
    { shift_nm: 10 },
    { widthScale: 0.75 },
    { widthScale: 1.35 },
  ];
  const TWO_AT_ONCE: FilterShape[] = [
    { shift_nm: -10, widthScale: 0.75 },
    { shift_nm: 10, widthScale: 1.35 },
  ];

  it.each([
    ["I", [3, 5, 10, 20], [], [], []],
    ["IB", [2, 4, 5, 10, 18], [], [], [4]],
    ["II", [3, 5, 10, 20], [], [], []],
    ["III", [3, 6, 12], [], [], []],
    ["1C", [2, 4, 8, 15], [], [], [2]],
    ["3C", [2, 3, 5, 8, 12], [], [3], [2]],
    ["5C", [2, 4, 10], [], [4], [2]],
    ["7C", [2, 6, 10], [], [], [2]],
    ["9C", [1, 6], [], [], []],
  ] as const)(
    "%s at %j m: the kind advised holds under each but at %j m; two departures at once turn it at %j m, by less than is worth mounting; at %j m it is called a near tie",
    (type, depths, turnedByOne, turnedByTwo, nearTies) => {
      const byOne = new Set<number>();
      const byTwo = new Set<number>();
      const ties: number[] = [];
      for (const depth of depths) {
        const scene = gradedScene(type, 50, depth);
        const { filter_kind, verdict } = filterChoice(scene);
        if (verdict === "near_tie") {
          ties.push(depth);
          continue;
        }
        const bestUnder = (shape: FilterShape) => {
          const all = scored(scene, GRID, shape);
          const ours = cheapest(
            all.filter(({ candidate }) => candidate.kind === filter_kind),
            WORTHWHILE,
          );
          return { best: cheapest(all, WORTHWHILE), ours };
        };
        for (const [shapes, turned] of [
          [SHAPES, byOne],
          [TWO_AT_ONCE, byTwo],
        ] as const) {
          for (const { best, ours } of shapes.map(bestUnder)) {
            if (best !== ours) turned.add(depth);
            expect(cost(ours) - cost(best)).toBeLessThan(WORTHWHILE);
          }
        }
      }
      expect([...byOne]).toEqual(turnedByOne);
      expect([...byTwo]).toEqual(turnedByTwo);
      // What is called a tie is not proved to hold.
      expect(ties).toEqual(nearTies);
    },
  );
});
