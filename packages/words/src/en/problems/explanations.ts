import type { ProblemCode } from "@sunfathom/contract";

/** What each kind of problem means and what to do about it, for the page that its `type` leads to. */
export const problemExplanations: Readonly<Record<ProblemCode, string>> = {
  invalid_scene:
    "`errors` names every field that is wrong, what is allowed there and, for a misspelt name, the nearest right one.",
  invalid_request:
    "`errors` names every field that is wrong, what is allowed there and, for a misspelt name, the nearest right one.",
  invalid_query: "This method at this path takes no query parameters: `errors` names those that were sent.",
  malformed_json: "Send one JSON object, in UTF-8.",
  malformed_request:
    "Check the request line, the escapes in the path (`%` and two hexadecimal digits) and the headers.",
  unauthorized:
    "Packages with keys, and marks before a paper closes, are for instructors: send `Authorization: Bearer` with the instructor's key of this service.",
  keys_not_offered:
    "This service has no instructor's key. Ask for a package without keys, or have `INSTRUCTOR_KEY` set.",
  marks_held_back:
    "Marks, feedback and solutions come from `closes_at` on, before that only with the instructor's key. The service stores nothing: keep the answers, and send them again then.",
  not_found: "`detail` names the nearest path; `/openapi.json` lists them all.",
  method_not_allowed: "The `Allow` header lists the methods that the path takes.",
  not_acceptable:
    "Answers are `application/json`, batches `application/jsonl`, packages of questions `application/zip`: let the `Accept` header include it, or leave it out.",
  request_timeout: "Send the whole request without pauses, or try again on a better connection.",
  model_version_mismatch:
    "The request asked for one version of the model with `expect_model_version`, and the service runs another. Leave the field out to take today's answer.",
  questions_changed:
    "The model has changed since the paper was made, and with it the right answers. Ask for a new paper.",
  body_too_large:
    "A body can have up to 256 kB, a batch up to 4 MB and each of its scenes up to 256 kB. A scene needs a few kilobytes. Lists and objects can stand up to 64 deep in each other: no scene needs ten.",
  url_too_long:
    "A URL can have up to 4096 characters. Send the scene with POST instead: same schema, same answer.",
  unsupported_media_type: "Send `Content-Type: application/json`, without a content encoding.",
  outside_the_model: "`errors` names the fields that lead outside the model, and its limits.",
  paper_not_possible:
    "`errors` says which kinds of question this level does not have, or that there are too few questions.",
  responses_do_not_fit:
    "`errors` names the answer that belongs to no question of the paper, or that its question does not take.",
  token_refused:
    "Send the token as `/v1/quiz-items` gave it. A token stops working when its key is taken out of use.",
  token_expired: "Papers are marked until their `expires`. Ask for a new one.",
  headers_too_large: "The request line and all headers together can have up to 16 kB.",
  too_many_requests:
    "Each request costs a part of your budget. `RateLimit-Policy` gives the budget and its seconds, `RateLimit` what is left. Try again after the time in `Retry-After`.",
  internal_error: "Your request is fine. `request_id` finds the failure in the log of the service.",
  unavailable: "The service is starting, stopping or overloaded. Try again after the time in `Retry-After`.",
};
