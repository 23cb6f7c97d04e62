import { randomBytes } from "node:crypto";
import type { IncomingMessage } from "node:http";

/** Short, and nothing in it that could break a log line or a header. */
const safe = /^[A-Za-z0-9._-]{1,64}$/;

/** The caller's `X-Request-Id` where it is safe to repeat, a new id otherwise. */
export function requestId({ headers }: Pick<IncomingMessage, "headers">): string {
  const given = headers["x-request-id"];
  return typeof given === "string" && safe.test(given) ? given : newId();
}

/** 96 random bits: of a thousand million requests no two have the same, and a header of 500 bytes has no room for 36 letters. */
export const newId = (): string => randomBytes(12).toString("base64url");
