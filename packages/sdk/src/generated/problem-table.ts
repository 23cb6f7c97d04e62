// Generated from openapi/openapi.json by packages/sdk/scripts/generate.mjs. Do not edit.

import type { ProblemError } from "../core/errors.js";
import {
  BodyTooLargeError,
  HeadersTooLargeError,
  InternalError,
  InvalidQueryError,
  InvalidSceneError,
  MalformedJsonError,
  MalformedRequestError,
  MethodNotAllowedError,
  ModelVersionMismatchError,
  NotAcceptableError,
  NotFoundError,
  OutsideTheModelError,
  RequestTimeoutError,
  TooManyRequestsError,
  UnavailableError,
  UnsupportedMediaTypeError,
  UrlTooLongError,
} from "./problems.js";

/**
 * The class of each kind of problem, by the problem's `type`.
 */
export const problemErrors: Readonly<Record<string, typeof ProblemError>> = {
  "/problems/body-too-large": BodyTooLargeError,
  "/problems/headers-too-large": HeadersTooLargeError,
  "/problems/internal-error": InternalError,
  "/problems/invalid-query": InvalidQueryError,
  "/problems/invalid-scene": InvalidSceneError,
  "/problems/malformed-json": MalformedJsonError,
  "/problems/malformed-request": MalformedRequestError,
  "/problems/method-not-allowed": MethodNotAllowedError,
  "/problems/model-version-mismatch": ModelVersionMismatchError,
  "/problems/not-acceptable": NotAcceptableError,
  "/problems/not-found": NotFoundError,
  "/problems/outside-the-model": OutsideTheModelError,
  "/problems/request-timeout": RequestTimeoutError,
  "/problems/too-many-requests": TooManyRequestsError,
  "/problems/unavailable": UnavailableError,
  "/problems/unsupported-media-type": UnsupportedMediaTypeError,
  "/problems/url-too-long": UrlTooLongError,
};
