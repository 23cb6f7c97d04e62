export type QuizProblemCode =
  | "count_out_of_range"
  | "template_unknown"
  | "template_not_at_level"
  | "too_few_questions"
  | "response_malformed"
  | "item_unknown"
  | "token_malformed"
  | "token_key_unknown"
  | "token_refused"
  | "token_expired"
  | "questions_changed"
  | "closes_at_missing"
  | "closes_at_without_effect"
  | "closes_at_out_of_range"
  | "release_without_effect"
  | "not_closed_yet";

/** A request that cannot be answered. `code` is stable and meant for programs; `field` names what is wrong where there is one. */
export class QuizProblem extends Error {
  override readonly name = "QuizProblem";

  constructor(
    readonly code: QuizProblemCode,
    message: string,
    readonly field?: string,
  ) {
    super(message);
  }
}
