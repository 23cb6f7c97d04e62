// Generated from openapi/openapi.json by packages/sdk/scripts/generate.mjs. Do not edit.

import { ProblemError } from "../core/response-errors.js";

/**
 * The body is too large. A body can have up to 256 kB, a batch up to 4 MB and each of its scenes up to 256 kB. A scene needs a few kilobytes. Lists and objects can stand up to 64 deep in each other: no scene needs ten. Status 413.
 * @example
 * if (error instanceof BodyTooLargeError) console.error(error.detail, error.requestId);
 */
export class BodyTooLargeError extends ProblemError {
  override readonly name = "BodyTooLargeError";
}

/**
 * The headers are too large. The request line and all headers together can have up to 16 kB. Status 431.
 * @example
 * if (error instanceof HeadersTooLargeError) console.error(error.detail, error.requestId);
 */
export class HeadersTooLargeError extends ProblemError {
  override readonly name = "HeadersTooLargeError";
}

/**
 * The service failed. Your request is fine. `request_id` finds the failure in the log of the service. Status 500.
 * @example
 * if (error instanceof InternalError) console.error(error.detail, error.requestId);
 */
export class InternalError extends ProblemError {
  override readonly name = "InternalError";
}

/**
 * The query string is not valid. This method at this path takes no query parameters: `errors` names those that were sent. Status 400.
 * @example
 * if (error instanceof InvalidQueryError) console.error(error.detail, error.requestId);
 */
export class InvalidQueryError extends ProblemError {
  override readonly name = "InvalidQueryError";
}

/**
 * The request is not valid. `errors` names every field that is wrong, what is allowed there and, for a misspelt name, the nearest right one. Status 400.
 * @example
 * if (error instanceof InvalidRequestError) console.error(error.detail, error.requestId);
 */
export class InvalidRequestError extends ProblemError {
  override readonly name = "InvalidRequestError";
}

/**
 * The scene is not valid. `errors` names every field that is wrong, what is allowed there and, for a misspelt name, the nearest right one. Status 400.
 * @example
 * if (error instanceof InvalidSceneError) console.error(error.detail, error.requestId);
 */
export class InvalidSceneError extends ProblemError {
  override readonly name = "InvalidSceneError";
}

/**
 * This service gives no packages with keys. This service has no instructor's key. Ask for a package without keys, or have `INSTRUCTOR_KEY` set. Status 403.
 * @example
 * if (error instanceof KeysNotOfferedError) console.error(error.detail, error.requestId);
 */
export class KeysNotOfferedError extends ProblemError {
  override readonly name = "KeysNotOfferedError";
}

/**
 * The body is not JSON. Send one JSON object, in UTF-8. Status 400.
 * @example
 * if (error instanceof MalformedJsonError) console.error(error.detail, error.requestId);
 */
export class MalformedJsonError extends ProblemError {
  override readonly name = "MalformedJsonError";
}

/**
 * The request is not well-formed HTTP. Check the request line, the escapes in the path (`%` and two hexadecimal digits) and the headers. Status 400.
 * @example
 * if (error instanceof MalformedRequestError) console.error(error.detail, error.requestId);
 */
export class MalformedRequestError extends ProblemError {
  override readonly name = "MalformedRequestError";
}

/**
 * The paper has not closed yet. Marks, feedback and solutions come from `closes_at` on, before that only with the instructor's key. The service stores nothing: keep the answers, and send them again then. Status 403.
 * @example
 * if (error instanceof MarksHeldBackError) console.error(error.detail, error.requestId);
 */
export class MarksHeldBackError extends ProblemError {
  override readonly name = "MarksHeldBackError";
}

/**
 * This path does not take this method. The `Allow` header lists the methods that the path takes. Status 405.
 * @example
 * if (error instanceof MethodNotAllowedError) console.error(error.detail, error.requestId);
 */
export class MethodNotAllowedError extends ProblemError {
  override readonly name = "MethodNotAllowedError";
}

/**
 * The model has a different version. The request asked for one version of the model with `expect_model_version`, and the service runs another. Leave the field out to take today's answer. Status 409.
 * @example
 * if (error instanceof ModelVersionMismatchError) console.error(error.detail, error.requestId);
 */
export class ModelVersionMismatchError extends ProblemError {
  override readonly name = "ModelVersionMismatchError";
}

/**
 * The answer does not come in a form that you accept. Answers are `application/json`, batches `application/jsonl`, packages of questions `application/zip`: let the `Accept` header include it, or leave it out. Status 406.
 * @example
 * if (error instanceof NotAcceptableError) console.error(error.detail, error.requestId);
 */
export class NotAcceptableError extends ProblemError {
  override readonly name = "NotAcceptableError";
}

/**
 * There is nothing at this path. `detail` names the nearest path; `/openapi.json` lists them all. Status 404.
 * @example
 * if (error instanceof NotFoundError) console.error(error.detail, error.requestId);
 */
export class NotFoundError extends ProblemError {
  override readonly name = "NotFoundError";
}

/**
 * The scene is valid, but outside what the model can answer. `errors` names the fields that lead outside the model, and its limits. Status 422.
 * @example
 * if (error instanceof OutsideTheModelError) console.error(error.detail, error.requestId);
 */
export class OutsideTheModelError extends ProblemError {
  override readonly name = "OutsideTheModelError";
}

/**
 * The request is valid, but no such paper can be made. `errors` says which kinds of question this level does not have, or that there are too few questions. Status 422.
 * @example
 * if (error instanceof PaperNotPossibleError) console.error(error.detail, error.requestId);
 */
export class PaperNotPossibleError extends ProblemError {
  override readonly name = "PaperNotPossibleError";
}

/**
 * The questions have changed. The model has changed since the paper was made, and with it the right answers. Ask for a new paper. Status 409.
 * @example
 * if (error instanceof QuestionsChangedError) console.error(error.detail, error.requestId);
 */
export class QuestionsChangedError extends ProblemError {
  override readonly name = "QuestionsChangedError";
}

/**
 * The request did not arrive in time. Send the whole request without pauses, or try again on a better connection. Status 408.
 * @example
 * if (error instanceof RequestTimeoutError) console.error(error.detail, error.requestId);
 */
export class RequestTimeoutError extends ProblemError {
  override readonly name = "RequestTimeoutError";
}

/**
 * The answers do not fit the paper. `errors` names the answer that belongs to no question of the paper, or that its question does not take. Status 422.
 * @example
 * if (error instanceof ResponsesDoNotFitError) console.error(error.detail, error.requestId);
 */
export class ResponsesDoNotFitError extends ProblemError {
  override readonly name = "ResponsesDoNotFitError";
}

/**
 * The token has expired. Papers are marked until their `expires`. Ask for a new one. Status 422.
 * @example
 * if (error instanceof TokenExpiredError) console.error(error.detail, error.requestId);
 */
export class TokenExpiredError extends ProblemError {
  override readonly name = "TokenExpiredError";
}

/**
 * The token is not one of this service, or was altered. Send the token as `/v1/quiz-items` gave it. A token stops working when its key is taken out of use. Status 422.
 * @example
 * if (error instanceof TokenRefusedError) console.error(error.detail, error.requestId);
 */
export class TokenRefusedError extends ProblemError {
  override readonly name = "TokenRefusedError";
}

/**
 * You have asked for too much. Each request costs a part of your budget. `RateLimit-Policy` gives the budget and its seconds, `RateLimit` what is left. Try again after the time in `Retry-After`. Status 429.
 * @example
 * if (error instanceof TooManyRequestsError) console.error(error.detail, error.requestId);
 */
export class TooManyRequestsError extends ProblemError {
  override readonly name = "TooManyRequestsError";
}

/**
 * The instructor's key is missing or wrong. Packages with keys, and marks before a paper closes, are for instructors: send `Authorization: Bearer` with the instructor's key of this service. Status 401.
 * @example
 * if (error instanceof UnauthorizedError) console.error(error.detail, error.requestId);
 */
export class UnauthorizedError extends ProblemError {
  override readonly name = "UnauthorizedError";
}

/**
 * The service cannot answer now. The service is starting, stopping or overloaded. Try again after the time in `Retry-After`. Status 503.
 * @example
 * if (error instanceof UnavailableError) console.error(error.detail, error.requestId);
 */
export class UnavailableError extends ProblemError {
  override readonly name = "UnavailableError";
}

/**
 * The service does not understand this type of body. Send `Content-Type: application/json`, without a content encoding. Status 415.
 * @example
 * if (error instanceof UnsupportedMediaTypeError) console.error(error.detail, error.requestId);
 */
export class UnsupportedMediaTypeError extends ProblemError {
  override readonly name = "UnsupportedMediaTypeError";
}

/**
 * The URL is too long. A URL can have up to 4096 characters. Send the scene with POST instead: same schema, same answer. Status 414.
 * @example
 * if (error instanceof UrlTooLongError) console.error(error.detail, error.requestId);
 */
export class UrlTooLongError extends ProblemError {
  override readonly name = "UrlTooLongError";
}
