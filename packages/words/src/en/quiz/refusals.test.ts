import { describe, expect, it } from "vitest";
import { quizRefusals as say } from "./refusals.js";

describe("what the quiz refuses is said with what it comes with", () => {
  it.each([
    [say.count_out_of_range({ most: 200 }), "A paper has 1 to 200 questions."],
    [say.template_unknown({ template: "red\n" }), 'There is no template "red\\n".'],
    [
      say.template_not_at_level({ template: "kelvin_order", levels: ["beginner", "working"] }),
      "kelvin_order is not asked at this level, only at: beginner, working.",
    ],
    [
      say.too_few_questions({ found: 7 }),
      "These templates hold only 7 different questions at this level that are not avoided. Ask for fewer, or for more templates or topics.",
    ],
    [
      say.response_malformed({ case: "other_field", field: "number", other: "choices" }),
      "This question is answered with number, not with choices.",
    ],
    [say.response_malformed({ case: "no_such_entry", entry: "Z" }), 'This question has no entry "Z".'],
    [say.response_malformed({ case: "entry_repeated" }), "Each entry can be named once."],
    [say.response_malformed({ case: "too_many_chosen", most: 1 }), "At most 1 can be chosen here."],
    [say.response_malformed({ case: "not_a_number" }), "The answer must be a finite number."],
    [
      say.response_malformed({ case: "number_ambiguous", typed: "1,250" }),
      '"1,250" can be read in two ways. Write thousands without a separator, and decimals so that three digits are not all that follows.',
    ],
    [
      say.response_malformed({ case: "other_unit", typed: "3 ft", unit: "m" }),
      '"3 ft" has another unit: answer in m, or without a unit.',
    ],
    [
      say.response_malformed({ case: "other_unit", typed: "3 m", unit: "" }),
      '"3 m" has a unit, and a bare number is asked for.',
    ],
    [say.response_malformed({ case: "order_incomplete" }), "Every entry has its place in the order."],
    [say.response_malformed({ case: "answered_twice", item: "q2" }), "Question q2 is answered twice."],
    [say.item_unknown({ item: "q99" }), 'The paper has no question "q99".'],
    [
      say.token_expired({ expired_at: "2026-05-01T00:00:00.000Z" }),
      "This token expired at 2026-05-01T00:00:00.000Z.",
    ],
    [say.closes_at_out_of_range({ case: "past", most_days: 366 }), "The paper would be closed already."],
    [say.closes_at_out_of_range({ case: "no_such_day", most_days: 366 }), "The month has no such day."],
    [
      say.closes_at_out_of_range({ case: "too_far_ahead", most_days: 366 }),
      "A paper can stay open for 366 days at most.",
    ],
  ])("%o", ({ message, allowed }, said) => {
    expect(message).toBe(said);
    expect(allowed).toMatch(/^\w.{10}/);
  });
});
