import type { ProblemCode } from "../problem/catalogue.js";

/** What can be wrong with a request for questions beyond its form, by the problem that its error comes with. */
export const quizErrorCodes = {
  invalid_request: [
    "closes_at_missing",
    "closes_at_without_effect",
    "release_without_effect",
    "version_without_effect",
    "practice_needs_keys",
  ],
  paper_not_possible: ["template_not_at_level", "closes_at_out_of_range", "too_few_questions"],
  responses_do_not_fit: ["item_unknown", "response_malformed"],
  token_refused: ["token_malformed", "token_key_unknown", "token_refused"],
  marks_held_back: ["not_closed_yet"],
  token_expired: ["token_expired"],
  questions_changed: ["questions_changed"],
} as const satisfies Partial<Record<ProblemCode, readonly string[]>>;
