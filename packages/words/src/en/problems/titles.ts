import type { ProblemCode, SceneProblemCode } from "@sunfathom/contract";

/** The kinds of problem that a scene can have, each in a sentence. */
export const sceneProblemTitles: Readonly<Record<SceneProblemCode, string>> = {
  invalid_scene: "The scene is not valid.",
  model_version_mismatch: "The model has a different version.",
  outside_the_model: "The scene is valid, but outside what the model can answer.",
};

/** Every kind of problem in a sentence. Made when asked for: who computes without a service meets those of scenes alone. */
export const problemTitles = (): Readonly<Record<ProblemCode, string>> => ({
  ...sceneProblemTitles,
  invalid_request: "The request is not valid.",
  invalid_query: "The query string is not valid.",
  malformed_json: "The body is not JSON.",
  malformed_request: "The request is not well-formed HTTP.",
  unauthorized: "The instructor's key is missing or wrong.",
  keys_not_offered: "This service gives no packages with keys.",
  marks_held_back: "The paper has not closed yet.",
  not_found: "There is nothing at this path.",
  method_not_allowed: "This path does not take this method.",
  not_acceptable: "The answer does not come in a form that you accept.",
  request_timeout: "The request did not arrive in time.",
  questions_changed: "The questions have changed.",
  body_too_large: "The body is too large.",
  url_too_long: "The URL is too long.",
  unsupported_media_type: "The service does not understand this type of body.",
  paper_not_possible: "The request is valid, but no such paper can be made.",
  responses_do_not_fit: "The answers do not fit the paper.",
  token_refused: "The token is not one of this service, or was altered.",
  token_expired: "The token has expired.",
  headers_too_large: "The headers are too large.",
  too_many_requests: "You have asked for too much.",
  internal_error: "The service failed.",
  unavailable: "The service cannot answer now.",
});
