import type { ServiceDetails } from "../../problems/service-details.js";
import type { Texts } from "../../problems/texts.js";

/** Why the service refuses a request. */
export const serviceDetails: Texts<ServiceDetails, string> = {
  budget_spent: ({ cost, window_s, wait_s }) =>
    `You have used up your budget of ${cost} in ${window_s} s. Try again in ${wait_s} s.`,
  client_has_too_much_waiting: ({ wait_s }) =>
    `You already have as many calculations waiting as one client can. Try again in ${wait_s} s.`,
  service_has_too_much_waiting: ({ wait_s }) => `The service is overloaded. Try again in ${wait_s} s.`,
  answer_too_late: () => "The answer took too long.",
  thread_died: () => "The calculation stopped before it was done. Try again.",
  starting_or_stopping: () => "The service is starting or stopping.",
  internal: () => "The request could not be answered.",

  not_http: () => "The request cannot be read as HTTP.",
  request_too_late: () => "The request did not arrive in time.",
  head_too_long: () => "The request line and headers exceed 16 kB.",
  too_many_headers: ({ most }) => `The request has more than ${most} headers.`,
  url_too_long: ({ most_characters }) => `The URL has more than ${most_characters} characters.`,
  bad_escape: () => "The path has an escape that cannot be decoded.",
  host_missing: () => "The request has no Host header.",
  host_repeated: () => "The request has more than one Host header.",
  other_expectation: () => "The Expect header can only be 100-continue.",
  body_of_other_length: () => "The body is not as long as Content-Length says.",
  not_understood: () => "The request cannot be understood.",

  body_too_long: ({ most }) => `The body exceeds ${most}.`,
  body_too_deep: ({ most }) => `Lists and objects stand more than ${most} deep in each other.`,
  body_not_declared_json: () => "The body is not declared as application/json.",
  body_not_declared: () => "The body has no Content-Type.",
  body_in_other_charset: () => "The body is declared in an encoding other than UTF-8.",
  body_encoded: () => "The body has a content encoding. Send it without one.",
  body_empty: () => "The body is empty.",
  body_not_utf8: () => "The body is not UTF-8.",
  body_not_json: () => "The body cannot be read as JSON.",

  no_such_path: ({ near }) =>
    near === undefined ? "/openapi.json lists every path." : `Did you mean ${near}?`,
  nothing_for_you: () => "There is nothing for you at this path.",
  no_such_problem: ({ paths }) => `The kinds are: ${paths.join(", ")}`,
  no_such_client: ({ path }) => `The client of this service is at ${path}.`,
  no_such_method: ({ allow, method }) => `This path takes ${allow}, not ${method}.`,
  no_proxy: () => "This service is not a proxy.",
  form_not_accepted: ({ forms }) => `The Accept header leaves out ${forms.join(" and ")}.`,

  no_instructor: ({ asked }) =>
    asked === "with_keys"
      ? "No instructor's key is configured, so nobody gets keys."
      : "No instructor's key is configured, so nobody can name a seed.",
  instructors_key_missing: ({ asked }) => `\`${asked}\` needs the instructor's key.`,
  instructors_key_wrong: () => "This is not the instructor's key.",
};
