/** What each refusal of the service, of a query string and of the quiz comes with, once in each of its cases. */
import type { ProblemTexts } from "../../packages/words/src/index.js";

type Samples<Texts> = {
  readonly [Code in keyof Texts]: Texts[Code] extends (
    parameters: infer Parameters,
    ...rest: never[]
  ) => unknown
    ? readonly [Parameters, ...Parameters[]]
    : never;
};

export const refusalSamples: {
  readonly [Part in "service" | "query" | "fields" | "queryDetails" | "quiz"]: Samples<ProblemTexts[Part]>;
} = {
  service: {
    budget_spent: [{ cost: 600, window_s: 10, wait_s: 3 }],
    client_has_too_much_waiting: [{ wait_s: 4 }],
    service_has_too_much_waiting: [{ wait_s: 5 }],
    answer_too_late: [{}],
    thread_died: [{}],
    starting_or_stopping: [{}],
    internal: [{}],
    not_http: [{}],
    request_too_late: [{}],
    head_too_long: [{}],
    too_many_headers: [{ most: 100 }],
    url_too_long: [{ most_characters: 8192 }],
    bad_escape: [{}],
    host_missing: [{}],
    host_repeated: [{}],
    other_expectation: [{}],
    body_of_other_length: [{}],
    not_understood: [{}],
    body_too_long: [{ most: "256 kB" }, { most: "4 MB" }],
    body_too_deep: [{ most: 64 }],
    body_not_declared_json: [{}],
    body_not_declared: [{}],
    body_in_other_charset: [{}],
    body_encoded: [{}],
    body_empty: [{}],
    body_not_utf8: [{}],
    body_not_json: [{}],
    no_such_path: [{ near: undefined }, { near: "/v1/attenuation" }],
    nothing_for_you: [{}],
    no_such_problem: [{ paths: ["/problems/not-found"] }],
    no_such_client: [{ path: "/sdk/a.tgz" }],
    no_such_method: [{ allow: "GET", method: "PUT" }],
    no_proxy: [{}],
    form_not_accepted: [{ forms: ["application/json", "text/html"] }],
    no_instructor: [{ asked: "with_keys" }, { asked: "seed" }],
    instructors_key_missing: [{ asked: "seed" }],
    instructors_key_wrong: [{}],
  },
  query: {
    malformed_escape: [{}],
    repeated_parameter: [{ name: "iso" }],
    needs_post: [{ name: "lamps" }],
    empty_value: [{ name: "iso" }],
    not_a_number: [{ name: "iso" }],
    unknown_field: [
      { name: "a", taken: "none" },
      { name: "a", taken: "fields_alone" },
      { name: "a", taken: "look_alone" },
    ],
  },
  fields: {
    malformed_escape: [{}],
    repeated_parameter: [{}],
    empty_value: [{}],
    wrong_length: [{ length: 4001, max_length: 4000 }],
    unknown_field: [{ name: "" }, { name: "depth" }],
  },
  queryDetails: {
    takes_none: [{ method: "GET" }],
    takes_fields_alone: [{}],
    takes_look_alone: [{}],
    no_such_look: [{}],
    no_such_fields: [{}],
  },
  quiz: {
    count_out_of_range: [{ most: 200 }],
    template_unknown: [{ template: "red_reech" }],
    template_not_at_level: [{ template: "red_reach", levels: ["working", "expert"] }],
    too_few_questions: [{ found: 7 }],
    response_malformed: [
      { case: "other_field", field: "choice", other: "order" },
      { case: "no_such_entry", entry: "z" },
      { case: "entry_repeated" },
      { case: "too_many_chosen", most: 2 },
      { case: "not_a_number" },
      { case: "number_ambiguous", typed: "1,234" },
      { case: "other_unit", typed: "12 ft", unit: "m" },
      { case: "other_unit", typed: "12 ft", unit: "" },
      { case: "order_incomplete" },
      { case: "answered_twice", item: "q4" },
    ],
    item_unknown: [{ item: "q99" }],
    token_malformed: [{}],
    token_key_unknown: [{}],
    token_refused: [{}],
    token_expired: [{ expired_at: "2026-05-12T09:30:00Z" }],
    questions_changed: [{ model_version: "2026.11.1" }],
    closes_at_missing: [{}],
    closes_at_without_effect: [{}],
    closes_at_out_of_range: [
      { case: "past", most_days: 366 },
      { case: "no_such_day", most_days: 366 },
      { case: "too_far_ahead", most_days: 366 },
    ],
    release_without_effect: [{}],
    version_without_effect: [{}],
    practice_needs_keys: [{}],
    not_closed_yet: [{ closes_at: "2026-05-12T09:30:00Z" }],
  },
};
