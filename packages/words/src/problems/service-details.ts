/** Why the service, not the model, refuses a request, with what its sentence needs. */
export interface ServiceDetails {
  // What the service has to do already.
  budget_spent: { cost: number; window_s: number; wait_s: number };
  client_has_too_much_waiting: { wait_s: number };
  service_has_too_much_waiting: { wait_s: number };
  answer_too_late: Nothing;
  thread_died: Nothing;
  starting_or_stopping: Nothing;
  internal: Nothing;
  // What cannot be read as a request.
  not_http: Nothing;
  request_too_late: Nothing;
  head_too_long: Nothing;
  too_many_headers: { most: number };
  url_too_long: { most_characters: number };
  bad_escape: Nothing;
  host_missing: Nothing;
  host_repeated: Nothing;
  other_expectation: Nothing;
  body_of_other_length: Nothing;
  not_understood: Nothing;
  // Bodies.
  /** `most` with its unit, such as `256 kB`. */
  body_too_long: { most: string };
  body_too_deep: { most: number };
  body_not_declared_json: Nothing;
  body_not_declared: Nothing;
  body_in_other_charset: Nothing;
  body_encoded: Nothing;
  body_empty: Nothing;
  body_not_utf8: Nothing;
  body_not_json: Nothing;
  // Paths, methods and forms.
  no_such_path: { near: string | undefined };
  nothing_for_you: Nothing;
  no_such_problem: { paths: readonly string[] };
  no_such_client: { path: string };
  no_such_method: { allow: string; method: string };
  no_proxy: Nothing;
  form_not_accepted: { forms: readonly string[] };
  // The instructor's key.
  no_instructor: { asked: InstructorsOwn };
  instructors_key_missing: { asked: InstructorsOwn };
  instructors_key_wrong: Nothing;
}

/** What only instructors may ask for. */
export type InstructorsOwn = "with_keys" | "seed";

/** A reason with what its sentence needs. */
export type ServiceDetail = {
  [Because in keyof ServiceDetails]: { because: Because } & ServiceDetails[Because];
}[keyof ServiceDetails];

type Nothing = Record<never, never>;
