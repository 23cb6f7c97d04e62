/** What sets a density: colour, light, or nothing that anyone sees. Laws over seeded scenes. */

import { gradedScene } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import { mapEach } from "../lists/non-empty.js";
import type { FilterChoiceAnswer } from "../result/filter-choice.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { filterChoice } from "./filter-choice.js";
import { judge } from "./merits.js";

/** Numerical Recipes' quick generator: the same scenes at every run. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (1664525 * state + 1013904223) % 4294967296;
    return state / 4294967296;
  };
}

const TYPES = ["I", "IA", "IB", "II", "III", "1C", "3C", "5C", "7C"] as const;
const random = seeded(1811);
const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
const SCENES: { name: string; scene: Scene }[] = Array.from({ length: 16 }, () => {
  const type = pick(TYPES);
  const depth_m = Math.round(2 + 30 * random() ** 2);
  const sun = Math.round(20 + 50 * random());
  const max_iso = pick([400, 1600, 6400]);
  const min_f_number = pick([1.8, 2.8, 4]);
  const shutter_s = pick([1 / 50, 1 / 100, 1 / 250]);
  return {
    name: `${type}, ${depth_m} m, sun ${sun}, ISO to ${max_iso}, f/${min_f_number}, 1/${Math.round(1 / shutter_s)} s`,
    scene: { ...gradedScene(type, sun, depth_m), max_iso, min_f_number, shutter_s },
  };
});
const parametersOf = (answer: FilterChoiceAnswer, code: string): Record<string, unknown> | undefined =>
  answer.reasons.find((r) => r.code === code)?.parameters as Record<string, unknown> | undefined;
/** So much light that neutral density takes the rest away. */
const floodlit = (scene: Scene): Scene => ({ ...scene, shutter_s: 4096 * scene.shutter_s });

describe.each(SCENES)("$name", ({ scene }) => {
  const answer = filterChoice(scene);
  const { filter_kind, filter_density = 0, as_good_from_density: from, as_good_to_density: to } = answer;

  it("has the colours of the best density at both ends of what is as good, and the weak end is advised", () => {
    if (filter_kind === "none") {
      expect([from, to]).toEqual([undefined, undefined]);
      return;
    }
    expect(from).toBe(filter_density);
    expect(to).toBeGreaterThanOrEqual(filter_density);
    const twentieths = Array.from({ length: 34 }, (_, n) => ({ kind: filter_kind, density: (n + 1) / 20 }));
    const depths = mapEach(answer.depths, (d) => d.depth_m);
    const errors = judge(conditionsOf(scene), NOMINAL, depths, twentieths).map(({ candidate, merits }) => ({
      density: candidate.density ?? 0,
      error: merits.reduce((sum, m) => sum + m.delta_e00, 0) / merits.length,
    }));
    const least = Math.min(...errors.map(({ error }) => error));
    for (const { density, error } of errors) {
      if (Math.abs(density - filter_density) < 1e-9 || Math.abs(density - (to ?? 0)) < 1e-9)
        expect(error).toBeLessThan(least + 0.1 + 0.02);
    }
  });

  it("is told to be held by light where, and only where, light without end would mount a denser one", () => {
    const held = parametersOf(answer, "light_holds_density");
    const free = filterChoice(floodlit(scene));
    if (held) {
      const wanted = (held["wanted"] as { density: number }).density;
      expect(wanted).toBeGreaterThan((to ?? 0) + 0.1 - 1e-9);
      expect(free.filter_kind).not.toBe("none");
      expect(free.as_good_to_density).toBeGreaterThan(to ?? 0);
    } else if (filter_kind !== "none") {
      // Not told: what light alone would mount lies within what is as good, or red is gone.
      expect(free.as_good_from_density ?? 0).toBeLessThan((to ?? 0) + 0.1 + 1e-9);
    }
  });

  it("mounts nothing where nothing of red is red", () => {
    const share = parametersOf(answer, "filter_adds_no_red")?.["with_share"];
    if (filter_kind === "none") expect(share).toBeUndefined();
    else expect(share).toBeGreaterThanOrEqual(0.01);
  });
});

describe("as scenes, they", () => {
  const answers = SCENES.map(({ scene }) => filterChoice(scene));
  it("reach all that is told: a band, light that holds, filters and none", () => {
    expect(answers.some((a) => a.filter_kind === "none")).toBe(true);
    expect(answers.filter((a) => a.filter_kind !== "none").length).toBeGreaterThan(4);
    expect(answers.some((a) => parametersOf(a, "light_holds_density"))).toBe(true);
    expect(answers.some((a) => (a.as_good_to_density ?? 0) > (a.as_good_from_density ?? 0) + 0.2)).toBe(true);
  });
});

it("where red is gone no filter is mounted, and the answer says from where on: IB at 30 m", () => {
  const answer = filterChoice(gradedScene("IB", 50, 30));
  expect(answer.filter_kind).toBe("none");
  const gone = parametersOf(answer, "no_red_to_gain");
  expect(gone).toMatchObject({ depth_m: 30 });
  expect(gone?.["share"]).toBeLessThan(0.01);
});

it("over a range that reaches where red is gone the filter counts for what lies above: IB from 5 to 30 m", () => {
  const answer = filterChoice(gradedScene("IB", 50, 5, 30));
  expect(answer.filter_kind).toBe("red");
  const { depth_m } = parametersOf(answer, "no_red_to_gain") as { depth_m: number };
  const matters = parametersOf(answer, "filter_adds_no_red") as { depth_m: number; with_share: number };
  expect(matters.depth_m).toBeLessThan(depth_m);
  expect(matters.with_share).toBeGreaterThan(0.01);
  expect(answer.serves_max_depth_m).toBeLessThanOrEqual(depth_m);
});

it("of owned filters that nobody can tell apart the weakest is mounted", () => {
  const scene = gradedScene("IB", 50, 20);
  const kit = [1.5, 1.2].map((filter_density) => ({
    id: `red-${filter_density}`,
    item: "lens_filter" as const,
    filter_kind: "red" as const,
    filter_density,
  }));
  const answer = filterChoice({ ...scene, kit });
  expect(answer.filter_id).toBe("red-1.2");
  expect(answer).not.toHaveProperty("as_good_from_density");
});

describe("the densest filter that is tried", () => {
  const deep = (type: string, depth_m: number): Scene => ({
    ...gradedScene(type, 50, depth_m),
    finish: "in_camera",
  });

  it("is told as an end of the search, and only where no weaker one of its kind is better: type I, 4 to 27 m", () => {
    const tellings: boolean[] = [];
    for (const depth_m of [4, 10, 15, 18, 22, 27]) {
      const scene = deep("I", depth_m);
      const answer = filterChoice(scene);
      expect(answer.filter_kind).toBe("red");
      const [weaker, densest, beyond] = judge(conditionsOf(scene), NOMINAL, [depth_m], [
        { kind: "red", density: 1.6 },
        { kind: "red", density: 1.7 },
        { kind: "red", density: 1.8 },
      ] as const).map(({ merits }) => merits[0].delta_e00);
      const told = parametersOf(answer, "densest_tried");
      expect(told).toEqual(
        densest !== undefined && weaker !== undefined && densest < weaker ? { density: 1.7 } : undefined,
      );
      tellings.push(told !== undefined);
      // What it says: a denser one would go on gaining.
      if (told) expect(beyond).toBeLessThan(densest ?? Number.NaN);
    }
    expect(new Set(tellings)).toEqual(new Set([false, true]));
  });

  it("is no end where a filter is owned, or none is mounted", () => {
    const kit = [{ id: "mine", item: "lens_filter", filter_kind: "red", filter_density: 1.7 }] as const;
    const owned = filterChoice({ ...deep("I", 22), kit: [...kit] });
    expect(owned.filter_id).toBe("mine");
    expect(parametersOf(owned, "densest_tried")).toBeUndefined();
    expect(parametersOf(filterChoice(deep("I", 40)), "densest_tried")).toBeUndefined();
  });
});
