/** Why the quiz refuses a request, with what was asked and what is possible. */
export interface QuizRefusals {
  count_out_of_range: { most: number };
  template_unknown: { template: string };
  template_not_at_level: { template: string; levels: readonly string[] };
  too_few_questions: { found: number };
  response_malformed: MalformedResponse;
  item_unknown: { item: string };
  token_malformed: Nothing;
  token_key_unknown: Nothing;
  token_refused: Nothing;
  /** RFC 3339, in UTC. */
  token_expired: { expired_at: string };
  questions_changed: { model_version: string };
  closes_at_missing: Nothing;
  closes_at_without_effect: Nothing;
  closes_at_out_of_range: { case: "past" | "no_such_day" | "too_far_ahead"; most_days: number };
  release_without_effect: Nothing;
  /** A package of another format than QTI has no version of it. */
  version_without_effect: Nothing;
  /** A package that marks inside, without leave to hold the keys. */
  practice_needs_keys: Nothing;
  /** RFC 3339, in UTC. */
  not_closed_yet: { closes_at: string };
}

export type QuizRefusalCode = keyof QuizRefusals;

type Nothing = Record<never, never>;

type MalformedResponse =
  | { case: "other_field"; field: string; other: string }
  | { case: "no_such_entry"; entry: string }
  | { case: "entry_repeated" }
  | { case: "too_many_chosen"; most: number }
  | { case: "not_a_number" }
  /** A comma or a point that may set off thousands or decimals. */
  | { case: "number_ambiguous"; typed: string }
  | { case: "other_unit"; typed: string; unit: string }
  | { case: "order_incomplete" }
  | { case: "answered_twice"; item: string };
