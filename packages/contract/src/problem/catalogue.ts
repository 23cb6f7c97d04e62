import { sceneProblemStatuses } from "./scene-problems.js";

/**
 * Every kind of problem that the service answers with, after RFC 9457, with its HTTP status. A code never changes; `type` is
 * `/problems/` and the code with hyphens. Its title and what it means are texts, and stand elsewhere.
 */
export const problemStatuses = {
  invalid_scene: sceneProblemStatuses.invalid_scene,
  invalid_request: 400,
  invalid_query: 400,
  malformed_json: 400,
  malformed_request: 400,
  unauthorized: 401,
  keys_not_offered: 403,
  marks_held_back: 403,
  not_found: 404,
  method_not_allowed: 405,
  not_acceptable: 406,
  request_timeout: 408,
  model_version_mismatch: sceneProblemStatuses.model_version_mismatch,
  questions_changed: 409,
  body_too_large: 413,
  url_too_long: 414,
  unsupported_media_type: 415,
  outside_the_model: sceneProblemStatuses.outside_the_model,
  paper_not_possible: 422,
  responses_do_not_fit: 422,
  token_refused: 422,
  token_expired: 422,
  headers_too_large: 431,
  too_many_requests: 429,
  internal_error: 500,
  unavailable: 503,
} as const satisfies Record<string, number>;

export type ProblemCode = keyof typeof problemStatuses;

export const problemCodes = Object.keys(problemStatuses) as ProblemCode[];
