import { sceneProblemKinds } from "./scene-problems.js";

/** A kind of problem that the service answers with, after RFC 9457. */
export interface ProblemKind {
  status: number;
  title: string;
  /** What it means and what to do about it, for the page that its `type` leads to. */
  explanation: string;
}

/**
 * Every kind of problem by its code. The code never changes; `type` is `/problems/` and the code with hyphens.
 */
export const problemKinds = {
  invalid_scene: {
    ...sceneProblemKinds.invalid_scene,
    explanation:
      "`errors` names every field that is wrong, what is allowed there and, for a misspelt name, the nearest right one.",
  },
  invalid_request: {
    status: 400,
    title: "The request is not valid.",
    explanation:
      "`errors` names every field that is wrong, what is allowed there and, for a misspelt name, the nearest right one.",
  },
  invalid_query: {
    status: 400,
    title: "The query string is not valid.",
    explanation: "This method at this path takes no query parameters: `errors` names those that were sent.",
  },
  malformed_json: {
    status: 400,
    title: "The body is not JSON.",
    explanation: "Send one JSON object, in UTF-8.",
  },
  malformed_request: {
    status: 400,
    title: "The request is not well-formed HTTP.",
    explanation:
      "Check the request line, the escapes in the path (`%` and two hexadecimal digits) and the headers.",
  },
  unauthorized: {
    status: 401,
    title: "The instructor's key is missing or wrong.",
    explanation:
      "Packages with keys, and marks before a paper closes, are for instructors: send `Authorization: Bearer` and the key that the service was configured with.",
  },
  keys_not_offered: {
    status: 403,
    title: "This service gives no packages with keys.",
    explanation:
      "Whoever runs it has configured no instructor's key. Ask for a package without keys, or have `INSTRUCTOR_KEY` set.",
  },
  marks_held_back: {
    status: 403,
    title: "The paper has not closed yet.",
    explanation:
      "Its marks, feedback and solutions are told from its `closes_at` on, and before that to the instructor's key alone. Nothing is stored: keep the answers, and send them again then.",
  },
  not_found: {
    status: 404,
    title: "There is nothing at this path.",
    explanation: "`detail` names the nearest path that there is; `/openapi.json` lists them all.",
  },
  method_not_allowed: {
    status: 405,
    title: "This path does not take this method.",
    explanation: "The `Allow` header lists the methods that it takes.",
  },
  not_acceptable: {
    status: 406,
    title: "The answer has no form that the caller takes.",
    explanation:
      "Answers are `application/json`, packages of questions `application/zip`: let the `Accept` header include it, or leave it out.",
  },
  request_timeout: {
    status: 408,
    title: "The request did not arrive in time.",
    explanation: "Send the whole request without pauses, or try again on a better connection.",
  },
  model_version_mismatch: {
    ...sceneProblemKinds.model_version_mismatch,
    explanation:
      "The request asked for an answer of one version of the model with `expect_model_version`, and the service runs another. Leave the field out to take the answer as it is now.",
  },
  questions_changed: {
    status: 409,
    title: "The questions have changed.",
    explanation:
      "The model has changed since the token's paper was made, and with it what is right. Ask for a new paper.",
  },
  body_too_large: {
    status: 413,
    title: "The body is too large.",
    explanation: "A body may have 256 kB. A scene takes a few kilobytes.",
  },
  url_too_long: {
    status: 414,
    title: "The URL is too long.",
    explanation:
      "A URL may have 4096 characters. Send the scene with POST instead: same schema, same answer.",
  },
  unsupported_media_type: {
    status: 415,
    title: "The body has a type that is not understood.",
    explanation: "Send `Content-Type: application/json`, without a content encoding.",
  },
  outside_the_model: {
    ...sceneProblemKinds.outside_the_model,
    explanation: "`errors` names the fields that lead outside the model, and how far it reaches.",
  },
  paper_not_possible: {
    status: 422,
    title: "The request is valid, but no such paper can be made.",
    explanation:
      "`errors` says which kinds of question are not asked at this level, or that there are too few questions.",
  },
  responses_do_not_fit: {
    status: 422,
    title: "The answers do not fit the paper.",
    explanation:
      "`errors` names the answer that the paper has no question for, or that its question does not take.",
  },
  token_refused: {
    status: 422,
    title: "The token is not one of this service, or was altered.",
    explanation: "Send the token as `/v1/quiz-items` gave it. A token ends when its key is taken out of use.",
  },
  token_expired: {
    status: 422,
    title: "The token has expired.",
    explanation: "Answers are marked until `expires`, as the paper said. Ask for a new one.",
  },
  headers_too_large: {
    status: 431,
    title: "The headers are too large.",
    explanation: "The request line and all headers together may have 16 kB.",
  },
  too_many_requests: {
    status: 429,
    title: "The caller has asked for too much.",
    explanation:
      "Each request has a cost, by what it asks for. `RateLimit-Policy` says how much may be spent in how many seconds, `RateLimit` what is left. Try again after the time in `Retry-After`.",
  },
  internal_error: {
    status: 500,
    title: "The service failed.",
    explanation:
      "Nothing is wrong with the request. `request_id` finds the failure in the log of the service.",
  },
  unavailable: {
    status: 503,
    title: "The service cannot answer now.",
    explanation: "It is starting, stopping or overloaded. Try again after the time in `Retry-After`.",
  },
} as const satisfies Record<string, ProblemKind>;

export type ProblemCode = keyof typeof problemKinds;

export const problemCodes = Object.keys(problemKinds) as ProblemCode[];
