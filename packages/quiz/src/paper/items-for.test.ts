// Every question's key is asked for again by another route (see another-route.test-support.ts). QUIZ_ITEMS=10000 makes as many.

import { attenuation } from "@sunfathom/planner";
import { misconceptions } from "@sunfathom/words";
import { describe, expect, it } from "vitest";
import { type Item, LEVELS, type Units } from "../item/item.js";
import { byDay, type Water } from "../light/scenes.js";
import { QuizProblem } from "../quiz-problem.js";
import { TEMPLATES } from "../templates/table.js";
import { itemsFor, type PaperRequest } from "./items-for.js";
import { expectSameKey } from "./same-key.test-support.js";

const WANTED = Number(process.env["QUIZ_ITEMS"] ?? 1500);
const PER_PAPER = 50;

const request = (change: Partial<PaperRequest>): PaperRequest => ({
  seed: "class of May",
  level: "working",
  count: 20,
  units: "metric",
  language: "en",
  ...change,
});

const papers: Item[][] = Array.from({ length: Math.ceil(WANTED / PER_PAPER) }, (_, i) =>
  itemsFor(
    request({
      seed: `paper ${i}`,
      level: LEVELS[i % 3]!,
      count: PER_PAPER,
      units: (["metric", "metric_and_imperial"] as Units[])[i % 2]!,
    }),
  ),
);
const items = papers.flat();

/** 5 points, and three standard deviations of a share of a quarter in some 250 questions. */
const MOST_OFF = 0.05 + 0.08 * Number(WANTED < 3000);

describe(`${items.length} questions`, () => {
  it("come from every template at every level that it is for", () => {
    const seen = new Set(items.map(({ template, level }) => `${template} ${level}`));
    for (const { id, levels } of TEMPLATES)
      for (const level of levels) expect(seen).toContain(`${id} ${level}`);
    expect(TEMPLATES.length).toBeGreaterThanOrEqual(45);
    expect(new Set(items.map(({ interaction }) => interaction)).size).toBe(5);
  });

  it("have exactly the right answers that another route finds", () => {
    for (const item of items) expectSameKey(item);
  }, 600_000);

  it("have no wrong option inside the model's doubt about the right one, or near it", () => {
    let checked = 0;
    for (const item of items) {
      if (item.template !== "red_left" && item.template !== "red_reach") continue;
      // Asked in stops, the curves of the picture are all there is to go by.
      if (!("options" in item) || "stops" in item.given) continue;
      const { water, sun_deg, depth_m = 10 } = item.given;
      const answer = attenuation(byDay(water as Water, Number(sun_deg), Number(depth_m)));
      const doubt =
        item.template === "red_left" ? answer.depths[0]!.red_left_percent : answer.red_to_tenth_depth_m;
      for (const { value, right } of item.options) {
        expect(Number(value) >= doubt.low && Number(value) <= doubt.high).toBe(right);
        checked++;
      }
    }
    expect(checked).toBeGreaterThan(40);
  });

  it("say no option twice, name a misconception for each wrong one and give feedback for all", () => {
    for (const item of items) {
      const texts =
        "options" in item
          ? item.options.map(({ text }) => text)
          : "entries" in item
            ? item.entries.map(({ text }) => text)
            : "left" in item
              ? item.right.map(({ text }) => text)
              : [];
      expect(new Set(texts.map((text) => text.toLowerCase())).size).toBe(texts.length);
      if ("options" in item) {
        for (const option of item.options) {
          expect(option.right).toBe(option.misconception === undefined);
          expect(option.feedback.length).toBeGreaterThan(5);
        }
      }
      if (item.interaction === "numeric") {
        for (const wrong of item.anticipated) {
          expect(wrong.high < item.accepted.low || wrong.low > item.accepted.high).toBe(true);
        }
      }
      expect(item.solution.steps.length).toBeGreaterThan(0);
      expect(item.solution.sources.length).toBeGreaterThan(0);
      expect(item.difficulty).toBeGreaterThan(0);
      expect(item.difficulty).toBeLessThanOrEqual(1);
    }
  });

  it("read as plain sentences: no gap where a number belongs, no trick, no doubled word", () => {
    for (const item of items) {
      const said = JSON.stringify({ ...item, picture: item.picture?.alt, given: undefined });
      expect(said).not.toMatch(/NaN|undefined|Infinity|null| {2}|\b([a-z]+) \1\b/i);
      expect(item.stem).not.toMatch(/\bnot\b|except|all of the above|none of the above/i);
      expect(item.stem).toMatch(/[.?]$/);
    }
  });

  it("do not give the right answer away by its place or its length", () => {
    const single = items.flatMap((item) =>
      item.interaction === "single_choice" && item.options.length === 4 ? [item] : [],
    );
    const share = (hit: (item: (typeof single)[number]) => boolean): number =>
      single.filter(hit).length / single.length;
    expect(single.length).toBeGreaterThan(200);
    for (const place of [0, 1, 2, 3])
      expect(Math.abs(share(({ options }) => options[place]!.right) - 0.25)).toBeLessThan(MOST_OFF);
    const longest = share(({ options }) => {
      const length = Math.max(...options.map((o) => o.text.length));
      return options.find((o) => o.text.length === length)!.right;
    });
    expect(longest).toBeLessThan(0.45);
  });

  it("get harder with the level, on the mean, though the estimate has not been told the level", () => {
    const [beginner = 0, working = 0, expert = 0] = LEVELS.map((level) => {
      const own = items.filter((item) => item.level === level);
      return own.reduce((sum, { difficulty }) => sum + difficulty, 0) / own.length;
    });
    expect(working).toBeGreaterThan(beginner);
    expect(expert).toBeGreaterThan(working);
  });

  it("use every misconception of the catalogue", () => {
    const used = new Set<string | undefined>();
    for (const item of items) {
      if ("options" in item) for (const { misconception } of item.options) used.add(misconception);
      if ("anticipated" in item) for (const { misconception } of item.anticipated) used.add(misconception);
      if ("wrong" in item) used.add(item.wrong.misconception);
    }
    expect(misconceptions.filter((id) => !used.has(id))).toEqual([]);
  });

  it("come from templates of which no two hold the same set of misunderstandings", () => {
    const sets = new Map<string, Set<string>>();
    for (const item of items) {
      const own = sets.get(item.template) ?? new Set<string>();
      if ("options" in item)
        for (const { misconception } of item.options) if (misconception) own.add(misconception);
      if ("anticipated" in item) for (const { misconception } of item.anticipated) own.add(misconception);
      if ("wrong" in item) own.add(item.wrong.misconception);
      sets.set(item.template, own);
    }
    const written = [...sets].map(([id, own]) => [[...own].sort().join(), id] as const);
    const shared = written.filter(([own], i) => written.some(([other], k) => k !== i && other === own));
    expect(shared).toEqual([]);
  });

  it("differ within a paper", () => {
    for (const paper of papers) {
      expect(new Set(paper.map((item) => `${item.stem} ${JSON.stringify(item.given)}`)).size).toBe(
        paper.length,
      );
    }
  });
});

describe("a paper", () => {
  it("is the same for the same seed, and another one for another seed, level or units", () => {
    const paper = JSON.stringify(itemsFor(request({})));
    expect(JSON.stringify(itemsFor(request({})))).toBe(paper);
    for (const change of [
      { seed: "class of June" },
      { level: "expert" },
      { units: "metric_and_imperial" },
    ] as const) {
      expect(JSON.stringify(itemsFor(request(change)))).not.toBe(paper);
    }
  });

  it("shows feet behind metres on request", () => {
    const stems = (units: Units) =>
      itemsFor(request({ units, count: 60 }))
        .map(({ stem }) => stem)
        .join(" ");
    expect(stems("metric")).not.toMatch(/ ft\b/);
    // 10 m = 32.8 ft (1 ft = 0.3048 m, exact).
    expect(stems("metric_and_imperial")).toContain("10 m (33 ft)");
  });

  it("spreads over the templates before any comes twice", () => {
    const working = TEMPLATES.filter(({ levels }) => levels.includes("working")).length;
    const paper = itemsFor(request({ count: working }));
    expect(new Set(paper.map(({ template }) => template)).size).toBe(working);
  });

  it("keeps to the templates asked for", () => {
    const paper = itemsFor(request({ count: 6, templates: ["exposure_way", "pay_with_iso"] }));
    expect(new Set(paper.map(({ template }) => template))).toEqual(new Set(["exposure_way", "pay_with_iso"]));
  });

  it("keeps to the topics asked for, and asks nothing that is to be avoided", () => {
    const topics = ["lamps", "balance"] as const;
    const met = itemsFor(request({ count: 12, topics }));
    for (const { topic } of met) expect(topics).toContain(topic);
    const avoid = met.map(({ fingerprint }) => fingerprint);
    expect(new Set(avoid).size).toBe(met.length);
    for (const seed of ["class of May", "class of June"])
      for (const { fingerprint } of itemsFor(request({ seed, count: 40, topics, avoid })))
        expect(avoid).not.toContain(fingerprint);
  });

  it("names a question the same in every paper, in whatever units", () => {
    const paper = itemsFor(request({}));
    const feet = itemsFor(request({ units: "metric_and_imperial" }));
    const shared = paper.filter(({ stem }) => feet.some((item) => item.stem === stem));
    expect(shared.length).toBeGreaterThan(0);
    for (const item of shared) expect(feet.map(({ fingerprint }) => fingerprint)).toContain(item.fingerprint);
  });

  it.each([
    [{ count: 0 }, "count_out_of_range", "count"],
    [{ count: 201 }, "count_out_of_range", "count"],
    [{ count: 1.5 }, "count_out_of_range", "count"],
    [{ templates: ["exposure_way", "ring_chian"] }, "template_unknown", "templates/1"],
    [{ templates: ["sheet_shift"] }, "template_not_at_level", "templates/0"],
    [{ templates: ["flat_port_field"], count: 40 }, "too_few_questions", "count"],
  ] as const)("refuses %j", (change, code, field) => {
    const ask = () => itemsFor(request(change));
    expect(ask).toThrow(QuizProblem);
    expect(ask).toThrow(expect.objectContaining({ code, field }));
  });
});
