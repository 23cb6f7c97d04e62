import type { ProblemCode } from "../problem/catalogue.js";

/** What can be wrong with a request for questions beyond its form, by the problem that its error comes with. */
export const quizErrorCodes = {
  invalid_request: {
    closes_at_missing: "A paper that tells its marks after its close does not say when it closes.",
    closes_at_without_effect: "A paper that tells its marks at once has no close.",
    release_without_effect:
      "A package with keys tells its solutions to whoever holds it, so no release can be kept.",
  },
  paper_not_possible: {
    template_not_at_level: "This kind of question is not asked at this level.",
    closes_at_out_of_range: "The time of the close is over, too far ahead, or no day of the calendar.",
    too_few_questions: "The kinds of question asked for do not hold so many different ones.",
  },
  responses_do_not_fit: {
    item_unknown: "The paper has no question of this id.",
    response_malformed: "The answer is not one that this question takes, or its question is answered twice.",
  },
  token_refused: {
    token_malformed: "This is no token of this service.",
    token_key_unknown: "The key that sealed the token is not, or no longer, in use.",
    token_refused: "The token was altered, or sealed with another key.",
  },
  marks_held_back: { not_closed_yet: "The paper tells its marks once it has closed." },
  token_expired: { token_expired: "The time of the token is over." },
  questions_changed: {
    questions_changed: "What is right has changed since the paper was made, with the model.",
  },
} as const satisfies Partial<Record<ProblemCode, Readonly<Record<string, string>>>>;
