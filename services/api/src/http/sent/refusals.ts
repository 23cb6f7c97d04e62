import { problem } from "@sunfathom/answers";
import type { Problem, ProblemCode } from "@sunfathom/contract";
import type { ProblemTexts, ServiceDetail, ServiceDetails } from "@sunfathom/words";

/** The problem that each reason of the service comes as. */
const kinds: Readonly<Record<keyof ServiceDetails, ProblemCode>> = {
  budget_spent: "too_many_requests",
  client_has_too_much_waiting: "too_many_requests",
  service_has_too_much_waiting: "unavailable",
  answer_too_late: "unavailable",
  thread_died: "unavailable",
  starting_or_stopping: "unavailable",
  internal: "internal_error",
  not_http: "malformed_request",
  request_too_late: "request_timeout",
  head_too_long: "headers_too_large",
  too_many_headers: "headers_too_large",
  url_too_long: "url_too_long",
  bad_escape: "malformed_request",
  host_missing: "malformed_request",
  host_repeated: "malformed_request",
  other_expectation: "malformed_request",
  body_of_other_length: "malformed_request",
  not_understood: "malformed_request",
  body_too_long: "body_too_large",
  body_too_deep: "body_too_large",
  body_not_declared_json: "unsupported_media_type",
  body_not_declared: "unsupported_media_type",
  body_in_other_charset: "unsupported_media_type",
  body_encoded: "unsupported_media_type",
  body_empty: "malformed_json",
  body_not_utf8: "malformed_json",
  body_not_json: "malformed_json",
  no_such_path: "not_found",
  nothing_for_you: "not_found",
  no_such_problem: "not_found",
  no_such_client: "not_found",
  no_such_method: "method_not_allowed",
  no_proxy: "method_not_allowed",
  form_not_accepted: "not_acceptable",
  no_instructor: "keys_not_offered",
  instructors_key_missing: "unauthorized",
  instructors_key_wrong: "unauthorized",
};

/** The kind of problem that a reason comes as. */
export const problemKind = ({ because }: ServiceDetail): ProblemCode => kinds[because];

/** The problem of what the service refuses. */
export const refusal = (detail: ServiceDetail, words: ProblemTexts): Problem =>
  problem(problemKind(detail), words, textOf(detail, words));

function textOf<Because extends keyof ServiceDetails>(
  detail: ServiceDetail & { because: Because } & ServiceDetails[Because],
  { service }: ProblemTexts,
): string {
  return service[detail.because](detail);
}
