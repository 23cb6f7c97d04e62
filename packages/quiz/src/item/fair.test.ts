import { describe, expect, it } from "vitest";
import { Draw } from "../random/draw.js";
import type { ChoiceDraft, Draft } from "./draft.js";
import { isFair } from "./fair.js";
import { numberOptions } from "./options.js";

const draft = (answer: Partial<ChoiceDraft>): Draft => ({
  given: {},
  stem: "?",
  answer: {
    interaction: "single_choice",
    options: [
      { value: 10, text: "10 %", right: true },
      { value: 20, text: "20 %", right: false, misconception: "one_way_only" },
      { value: 40, text: "40 %", right: false, misconception: "inverse_linear" },
    ],
    ...answer,
  },
  steps: [{ text: "", operation: "recall" }],
  sources: [],
  basis: "definition",
});
const options = (draft({}).answer as ChoiceDraft).options;

describe("the gate of fairness", () => {
  it("lets a fair draft through", () => {
    expect(isFair(draft({ interval: { low: 8, high: 19 } }))).toBe(true);
  });

  it.each([
    ["two right answers to a single choice", { options: options.map((o) => ({ ...o, right: true })) }],
    [
      "no right answer",
      { options: options.map((o) => ({ ...o, right: false, misconception: "one_way_only" as const })) },
    ],
    [
      "only right answers to a multiple choice",
      { interaction: "multiple_choice" as const, options: options.map((o) => ({ ...o, right: true })) },
    ],
    ["two options that read the same", { options: options.map((o) => ({ ...o, text: "10 %" })) }],
    ["a wrong option within the doubt about the right one", { interval: { low: 8, high: 25 } }],
    ["a wrong option without a misconception", { options: options.map(({ misconception: _, ...o }) => o) }],
    ["two options only", { options: options.slice(0, 2) }],
  ])("stops %s", (_, change) => {
    expect(isFair(draft(change))).toBe(false);
  });

  it("stops options that are near the right one or each other, or inside the doubt, before they are drawn", () => {
    const draw = new Draw("x");
    const text = (value: number): string => value.toFixed(0);
    const wrong = [
      ["one_way_only", 10.5],
      ["inverse_linear", 30],
      ["water_forgotten", 31],
      ["distance_forgotten", 14],
    ] as const;
    const smallest = { draw, aim: { size: 0, length: 0 } };
    // 10.5 and 14 lie in the doubt, 30 and 31 beside each other: one wrong option is left, which is too few.
    expect(numberOptions(smallest, { key: 10, interval: { low: 8, high: 15 }, wrong, text })).toBeUndefined();
    const more = numberOptions(smallest, { key: 10, wrong: [...wrong, ["order_reversed", 50]], text });
    expect(more?.map(({ value }) => value)).toEqual(expect.arrayContaining([10, 14, 50]));
    expect(more).not.toContainEqual(expect.objectContaining({ value: 10.5 }));
  });

  it.each([0, 1, 2, 3])(
    "sets the right number among others so that %i are smaller, where that was aimed at",
    (smaller) => {
      const wrong = [2, 4, 6, 15, 20, 40].map((value) => ["one_way_only", value] as const);
      const asked = { key: 10, wrong, text: String };
      for (let i = 0; i < 20; i++) {
        const aim = { size: smaller / 4, length: 0 };
        const options = numberOptions({ draw: new Draw(`aim ${i}`), aim }, asked);
        expect(options).toHaveLength(4);
        expect(options?.filter(({ value }) => Number(value) < 10)).toHaveLength(smaller);
      }
    },
  );
});
