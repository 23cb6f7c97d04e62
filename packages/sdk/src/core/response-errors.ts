import type { FieldError } from "../generated/types.js";
import { SunfathomError } from "./errors.js";

/** What an answer with an error carries beside its body. */
export interface ErrorResponse {
  /** HTTP status. */
  status: number;
  requestId?: string | undefined;
  /** How long the service asks to wait before another try, in milliseconds. */
  retryAfterMs?: number | undefined;
}

/**
 * Something answered with an error.
 * @example
 * if (error instanceof ResponseError) console.error(error.status, error.requestId);
 */
export class ResponseError extends SunfathomError {
  override readonly name: string = "ResponseError";
  /** HTTP status; offline, the one that the service would have answered with. */
  declare readonly status: number;
  /** Id of the request in the log of the service. */
  declare readonly requestId: string | undefined;
  /** How long the service asks to wait before another try, in milliseconds. */
  declare readonly retryAfterMs: number | undefined;
  constructor(message: string, { status, requestId, retryAfterMs }: ErrorResponse, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.status = status;
    this.requestId = requestId;
    this.retryAfterMs = retryAfterMs;
  }
}

/**
 * What answered is not the service, or not as it describes itself: HTML from a proxy in between, for instance.
 * @example
 * if (error instanceof UnexpectedResponseError) console.error("Is this the service?", error.message);
 */
export class UnexpectedResponseError extends ResponseError {
  override readonly name: string = "UnexpectedResponseError";
}

/** A problem (RFC 9457). The fields that this package does not know of are left out. */
export interface ProblemBody {
  type: string;
  title?: unknown;
  code?: unknown;
  detail?: unknown;
  errors?: unknown;
}

/**
 * The service refused, and says why (RFC 9457). Each kind that the description has is a class of its own; a kind that
 * only a newer service knows is this one.
 * @example
 * if (error instanceof ProblemError) {
 *   for (const { pointer, message, allowed } of error.errors) console.error(pointer, message, allowed);
 * }
 */
export class ProblemError extends ResponseError {
  override readonly name: string = "ProblemError";
  /** The kind of problem: a reference to a page that explains it, resolved against the service. */
  declare readonly type: string;
  /** The kind of problem in a sentence. */
  declare readonly title: string;
  /** The kind of problem, for programs. */
  declare readonly code: string;
  /** What went wrong this time. */
  declare readonly detail: string;
  /** What is wrong with each field, by JSON pointer; empty where the problem is none of fields. */
  declare readonly errors: FieldError[];
  constructor(problem: ProblemBody, response: ErrorResponse) {
    const title = text(problem.title) ?? problem.type;
    const detail = text(problem.detail) ?? title;
    super(detail, response);
    this.type = problem.type;
    this.title = title;
    this.code = text(problem.code) ?? "";
    this.detail = detail;
    this.errors = Array.isArray(problem.errors) ? problem.errors : [];
  }
}

function text(value: unknown): string | undefined {
  return typeof value === "string" ? value : undefined;
}
