import { describe, expect, it } from "vitest";
import { difficultyOf } from "./difficulty.js";
import type { Draft } from "./draft.js";

const draft = (wrong: number, steps: Draft["steps"]): Draft => ({
  given: {},
  stem: "?",
  answer: {
    interaction: "single_choice",
    options: [
      { value: 10, text: "10", right: true },
      { value: wrong, text: String(wrong), right: false, misconception: "one_way_only" },
    ],
  },
  steps,
  sources: [],
  basis: "definition",
});
const step = (operation: Draft["steps"][number]["operation"]) => ({ text: "", operation });

describe("the estimate of difficulty", () => {
  it("follows the stated rule", () => {
    // One step of recall, nearest wrong number beyond four times, a guess right in one of two: 0.2 × 0.5.
    expect(difficultyOf(draft(50, [step("recall")]))).toBe(0.1);
    // Half way to four times on a logarithmic scale: 0.2 × 0.5 more.
    expect(difficultyOf(draft(20, [step("recall")]))).toBe(0.2);
    // Four entries to put in order: 0.2 × 23/24, and three more things to decide (0.09).
    const entries = ["a", "b", "c", "d"].map((key) => ({ key, text: key }));
    const ordering = { interaction: "ordering" as const, entries, anticipated: [] };
    expect(difficultyOf({ ...draft(50, [step("recall")]), answer: ordering })).toBe(0.28);
    // Two more steps (0.16), the hardest of them a power (0.35).
    expect(difficultyOf(draft(50, [step("add"), step("power"), step("recall")]))).toBe(0.61);
  });
});
