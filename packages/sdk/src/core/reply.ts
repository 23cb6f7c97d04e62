import type { Reply } from "./attempt.js";
import { isProblem, problemError } from "./problem.js";
import { type ErrorResponse, type ResponseError, UnexpectedResponseError } from "./response-errors.js";
import { retryAfterMs } from "./retry.js";
import type { RateLimit, ResponseMeta } from "./types.js";

/**
 * Reads the content of a good answer.
 * @param file media type of an answer that is a file, or its first part and a slash, `*` for any
 * @throws UnexpectedResponseError for anything else than that, or than JSON
 */
export function contentOf(reply: Reply, file: string | undefined): unknown {
  if (file !== undefined) {
    const type = reply.headers.get("content-type") ?? "";
    if ((file !== "*" && !type.startsWith(file)) || reply.bytes === undefined) throw unexpected(reply);
    // Of files, the kinds that are text.
    return /[/+]xml\b|^text\//.test(type) ? new TextDecoder().decode(reply.bytes) : reply.bytes;
  }
  const json = jsonOf(reply);
  if (json === undefined) throw unexpected(reply);
  return json;
}

/** The error of an answer that is not a good one. */
export function errorOf(reply: Reply): ResponseError {
  const json = jsonOf(reply);
  return isProblem(json) ? problemError(json, errorResponse(reply)) : unexpected(reply);
}

/** JSON of a body that is declared as such; undefined for anything else. */
function jsonOf({ headers, text }: Reply): unknown {
  if (!/^application\/([\w.-]+\+)?jsonl?\b/i.test(headers.get("content-type") ?? "")) return undefined;
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function unexpected(reply: Reply): UnexpectedResponseError {
  const type = reply.headers.get("content-type") ?? "no content type";
  const start = reply.text.slice(0, 80).replace(/\s+/g, " ");
  return new UnexpectedResponseError(
    `No answer of the service: status ${reply.status}, ${type}, starting with ${JSON.stringify(start)}.`,
    errorResponse(reply),
  );
}

function errorResponse({ status, headers }: Reply): ErrorResponse {
  return {
    status,
    requestId: headers.get("x-request-id") ?? undefined,
    retryAfterMs: retryAfterMs(headers.get("retry-after")),
  };
}

/** What is known of an answer beside its content. */
export function metaOf({ headers }: Reply, source: ResponseMeta["source"], attempts: number): ResponseMeta {
  const requestId = headers.get("x-request-id");
  const etag = headers.get("etag");
  const rateLimit = rateLimitOf(headers.get("ratelimit"));
  return {
    source,
    attempts,
    ...(requestId === null ? {} : { requestId }),
    ...(etag === null ? {} : { etag }),
    ...(rateLimit === undefined ? {} : { rateLimit }),
  };
}

/** Reads `RateLimit: "name";r=50;t=30` (draft-ietf-httpapi-ratelimit-headers): `r` calls left, `t` seconds. */
function rateLimitOf(header: string | null): RateLimit | undefined {
  const remaining = header?.match(/;\s*r=(\d+)/)?.[1];
  if (remaining === undefined) return undefined;
  const reset = header?.match(/;\s*t=(\d+)/)?.[1];
  return { remaining: Number(remaining), ...(reset === undefined ? {} : { reset_s: Number(reset) }) };
}
