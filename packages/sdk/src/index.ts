export { Sunfathom } from "./client.js";
export type { ApiOf } from "./core/api-of.js";
export {
  type Batch,
  BatchEndedError,
  type Batches,
  type BatchItemResult,
  type BatchName,
  type BatchOfItems,
  type BatchOfVaried,
  type BatchResults,
} from "./core/batches.js";
export { type AnswerCache, type KeptAnswer, memoryCache } from "./core/cache.js";
export {
  AbortedError,
  ConnectionError,
  NotOfflineError,
  SunfathomError,
  TimeoutError,
} from "./core/errors.js";
export type { FieldsOf, Picked } from "./core/fields.js";
export { ProblemError, ResponseError, UnexpectedResponseError } from "./core/response-errors.js";
export type {
  Call,
  CallOptions,
  Fetch,
  RateLimit,
  ResponseMeta,
  SunfathomOptions,
} from "./core/types.js";
export type * from "./generated/api.js";
export * from "./generated/problems.js";
export type * from "./generated/types.js";
export { descriptionHash, descriptionVersion } from "./generated/version.js";
