import { randomUUID } from "node:crypto";
import type { IncomingMessage } from "node:http";

/** Short, and nothing in it that could break a log line or a header. */
const safe = /^[A-Za-z0-9._-]{1,64}$/;

/** The caller's `X-Request-Id` where it is safe to repeat, a new id otherwise. */
export function requestId({ headers }: Pick<IncomingMessage, "headers">): string {
  const given = headers["x-request-id"];
  return typeof given === "string" && safe.test(given) ? given : randomUUID();
}
