import { describe, expect, it } from "vitest";
import { quizRefusals as say } from "./refusals.js";

describe("what the quiz refuses is told with what it comes with", () => {
  it.each([
    [say.count_out_of_range({ most: 200 }), /\b1\b.*\b200\b/],
    [say.template_unknown({ template: "red\n" }), /"red\\n"/],
    [
      say.template_not_at_level({ template: "kelvin_order", levels: ["beginner", "working"] }),
      /kelvin_order.*beginner.*working/,
    ],
    [say.too_few_questions({ found: 7 }), /\b7\b/],
    [say.response_malformed({ case: "other_field", field: "number", other: "choices" }), /number.*choices/],
    [say.response_malformed({ case: "no_such_entry", entry: "Z" }), /"Z"/],
    [say.response_malformed({ case: "too_many_chosen", most: 1 }), /\b1\b/],
    [say.response_malformed({ case: "number_ambiguous", typed: "1,250" }), /"1,250"/],
    [say.response_malformed({ case: "other_unit", typed: "3 ft", unit: "m" }), /"3 ft".* m\b/],
    [say.response_malformed({ case: "other_unit", typed: "3 m", unit: "" }), /"3 m"/],
    [say.response_malformed({ case: "answered_twice", item: "q2" }), /\bq2\b/],
    [say.item_unknown({ item: "q99" }), /"q99"/],
    [say.token_expired({ expired_at: "2026-05-01T00:00:00.000Z" }), /2026-05-01T00:00:00\.000Z/],
    [say.closes_at_out_of_range({ case: "too_far_ahead", most_days: 366 }), /\b366\b/],
  ])("%o", ({ message, allowed }, figures) => {
    expect(message).toMatch(figures);
    expect(allowed).toMatch(/^\w.{10}/);
  });

  it("differently by its case", () => {
    const closes = (["past", "no_such_day", "too_far_ahead"] as const).map((one) =>
      say.closes_at_out_of_range({ case: one, most_days: 366 }),
    );
    const answers = (["entry_repeated", "not_a_number", "order_incomplete"] as const).map((one) =>
      say.response_malformed({ case: one }),
    );
    const said = [...closes, ...answers].map(({ message }) => message);
    expect(new Set(said)).toHaveLength(6);
    for (const message of said) expect(message).toMatch(/^[A-Z].*\.$/);
  });
});
