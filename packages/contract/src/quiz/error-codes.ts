import type { ProblemCode } from "../problem/catalogue.js";

/** What can be wrong with a request for questions beyond its form, by the problem that its error comes with. */
export const quizErrorCodes = {
  paper_not_possible: {
    template_not_at_level: "This kind of question is not asked at this level.",
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
  token_expired: { token_expired: "The time of the token is over." },
  questions_changed: { questions_changed: "The model or the texts have changed since the paper was made." },
} as const satisfies Partial<Record<ProblemCode, Readonly<Record<string, string>>>>;
