import { describe, expect, it } from "vitest";
import { type Item, LEVELS } from "../item/item.js";
import { itemsFor } from "../paper/items-for.js";
import { QuizProblem } from "../quiz-problem.js";
import { grade } from "./grade.js";
import { gradePaper } from "./grade-paper.js";
import type { Response } from "./response.js";

const items = LEVELS.flatMap((level) =>
  itemsFor({ seed: "g", level, count: 60, units: "metric", language: "en" }),
);
const of = <Kind extends Item["interaction"]>(kind: Kind): Extract<Item, { interaction: Kind }> => {
  const found = items.find((item): item is Extract<Item, { interaction: Kind }> => item.interaction === kind);
  if (!found) throw new Error(kind);
  return found;
};

/** What somebody answers who knows. */
function rightResponse(item: Item): Response {
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      return { choices: item.options.filter((o) => o.right).map(({ id }) => id) };
    case "numeric":
      return { number: item.value };
    case "ordering":
      return { order: item.right_order };
    case "matching":
      return { pairs: item.pairs };
  }
}

/** Wrong answers that were foreseen, with what they should be told. */
function foreseen(item: Item): { response: Response; text: string }[] {
  if (item.interaction === "single_choice") {
    return item.options
      .filter((o) => !o.right)
      .map((o) => ({ response: { choices: [o.id] }, text: o.feedback }));
  }
  if (item.interaction === "numeric") {
    return item.anticipated.map((w) => ({ response: { number: (w.low + w.high) / 2 }, text: w.feedback }));
  }
  if (item.interaction === "ordering") {
    return item.anticipated.map((w) => ({ response: { order: w.order }, text: w.feedback }));
  }
  return [];
}

describe("grading", () => {
  it("gives the right answer full marks, whatever the question", () => {
    for (const item of items) {
      expect(grade(item, rightResponse(item))).toMatchObject({ item: item.id, score: 1, right: true });
    }
  });

  it("tells foreseen wrong answers why they are wrong, with the step that they missed", () => {
    let told = 0;
    for (const item of items) {
      for (const { response, text } of foreseen(item)) {
        const { right, feedback } = grade(item, response);
        expect(right).toBe(false);
        expect(feedback[0]).toMatchObject({ text, misconception: expect.any(String) });
        told++;
      }
    }
    expect(told).toBeGreaterThan(200);
  });

  it("tells nothing of a blank, which earns nothing, but to an instructor", () => {
    const item = items.find(({ interaction }) => interaction === "multiple_choice");
    if (item?.interaction !== "multiple_choice") throw new Error("no such question");
    const blank = grade(item, { choices: [] });
    expect(blank).toEqual({
      item: item.id,
      score: 0,
      right: false,
      feedback: [{ text: expect.any(String) }],
    });
    expect(blank).toEqual({ ...grade(of("matching"), { pairs: [] }), item: item.id });
    expect(grade(item, { choices: [] }, { blanks: true })).toMatchObject({
      score: 0,
      solution: item.solution,
    });
  });

  it("takes a blank for a blank, whatever the question and however it is written", () => {
    const blanks: Record<Item["interaction"], Response[]> = {
      single_choice: [{}, { choices: [] }],
      multiple_choice: [{}, { choices: [] }],
      numeric: [{}, { typed: "" }, { typed: " \t" }],
      ordering: [{}, { order: [] }],
      matching: [{}, { pairs: [] }],
    };
    for (const item of items) {
      for (const blank of blanks[item.interaction]) {
        const told = grade(item, blank);
        expect(told).toEqual({
          item: item.id,
          score: 0,
          right: false,
          feedback: [{ text: expect.any(String) }],
        });
        expect(grade(item, blank, { blanks: true })).toEqual({ ...told, solution: item.solution });
      }
    }
  });

  it("takes a number as it is typed: with a comma, with its unit", () => {
    for (const item of items) {
      if (item.interaction !== "numeric") continue;
      const typed = `${item.value}`.replace(".", ",");
      expect(grade(item, { typed }).score).toBe(1);
      expect(grade(item, { typed: `${typed} ${item.unit}` }).score).toBe(1);
      expect(grade(item, { typed: String(item.accepted.high * 2 + 1) }).score).toBe(0);
    }
  });

  it("accepts numbers up to the ends of the interval and none beyond", () => {
    const item = of("numeric");
    const { low, high } = item.accepted;
    expect(grade(item, { number: low }).score).toBe(1);
    expect(grade(item, { number: high }).score).toBe(1);
    expect(grade(item, { number: low - 1e-4 }).score).toBe(0);
    expect(grade(item, { number: high + 1e-4 }).score).toBe(0);
  });

  it("marks multiple choice in part, and takes wrong choices off, down to nothing", () => {
    const item = items.find(
      (i) =>
        i.interaction === "multiple_choice" &&
        i.options.filter((o) => o.right).length === 2 &&
        i.options.length >= 4,
    );
    if (item?.interaction !== "multiple_choice") throw new Error("no such question");
    const right = item.options.filter((o) => o.right).map(({ id }) => id);
    const wrong = item.options.filter((o) => !o.right).map(({ id }) => id);
    const score = (choices: string[]): number => grade(item, { choices }).score;
    expect(score([right[0]!])).toBe(0.5);
    expect(score([...right, wrong[0]!])).toBe(0.5);
    expect(score([right[0]!, wrong[0]!])).toBe(0);
    expect(score(wrong)).toBe(0);
    expect(score([])).toBe(0);
    expect(grade(item, { choices: [right[0]!] }).feedback.map(({ about }) => about)).toEqual(
      expect.arrayContaining(right),
    );
  });

  it("marks orders by pairs: one exchange of neighbours among four costs a third, the reverse all", () => {
    const item = items.find((i) => i.interaction === "ordering" && i.entries.length === 4);
    if (item?.interaction !== "ordering") throw new Error("no such question");
    const [a, b, c, d] = item.right_order as [string, string, string, string];
    // Five pairs kept, one turned, of six (Kendall's tau).
    expect(grade(item, { order: [b, a, c, d] }).score).toBeCloseTo(4 / 6, 12);
    expect(grade(item, { order: [d, c, b, a] }).score).toBe(0);
  });

  it("marks matching pair by pair", () => {
    const item = of("matching");
    expect(grade(item, { pairs: item.pairs.slice(1) }).score).toBeCloseTo(2 / 3, 12);
    expect(grade(item, { pairs: [] }).score).toBe(0);
  });

  const malformed: [string, () => unknown, string][] = [
    ["another kind of answer", () => grade(of("numeric"), { choices: ["A"] }), "choices"],
    ["a blank of another kind", () => grade(of("numeric"), { choices: [] }), "choices"],
    ["another unit", () => grade(of("numeric"), { typed: "3 furlongs" }), "typed"],
    ["a number twice", () => grade(of("numeric"), { number: 1, typed: "1" }), "number"],
    ["no number", () => grade(of("numeric"), { number: Number.NaN }), "number"],
    ["an unknown option", () => grade(of("single_choice"), { choices: ["Z"] }), "choices"],
    [
      "two options where one is asked for",
      () => grade(of("single_choice"), { choices: ["A", "B"] }),
      "choices",
    ],
    ["an option twice", () => grade(of("multiple_choice"), { choices: ["A", "A"] }), "choices"],
    ["an order with a gap", () => grade(of("ordering"), { order: ["A", "B"] }), "order"],
    [
      "a partner from nowhere",
      () => grade(of("matching"), { pairs: [{ left: "L1", right: "R9" }] }),
      "pairs",
    ],
  ];
  it.each(malformed)("refuses %s", (_, ask, field) => {
    expect(ask).toThrow(QuizProblem);
    expect(ask).toThrow(expect.objectContaining({ code: "response_malformed", field }));
  });
});

describe("grading a paper", () => {
  const paper = itemsFor({ seed: "p", level: "beginner", count: 5, units: "metric", language: "en" });

  it("adds up scores and tells nothing of what was not answered", () => {
    const [first, second] = paper as [Item, Item];
    const result = gradePaper(paper, [
      { item: second.id, ...rightResponse(second) },
      { item: first.id, ...rightResponse(first) },
    ]);
    expect(result).toMatchObject({ score: 2, max_score: 5 });
    expect(result.grades.map(({ item }) => item)).toEqual([second.id, first.id]);
  });

  it("points to what is wrong", () => {
    const [first] = paper as [Item];
    const twice = { item: first.id, ...rightResponse(first) };
    const thrown = (responses: Parameters<typeof gradePaper>[1]) => () => gradePaper(paper, responses);
    expect(thrown([{ item: "q99" }])).toThrow(
      expect.objectContaining({ code: "item_unknown", field: "responses/0/item" }),
    );
    expect(thrown([twice, twice])).toThrow(
      expect.objectContaining({ code: "response_malformed", field: "responses/1/item" }),
    );
    expect(thrown([{ item: first.id, pairs: [{ left: "A", right: "B" }] }])).toThrow(
      expect.objectContaining({
        code: "response_malformed",
        field: expect.stringMatching(/^responses\/0\//),
      }),
    );
  });
});
