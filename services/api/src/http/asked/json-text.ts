import { problem } from "@sunfathom/answers";
import type { FieldErrorCode, Problem } from "@sunfathom/contract";
import type { ProblemTexts } from "@sunfathom/words";
import { defaultLimits } from "../../config/limits.js";
import { isDeep } from "./nesting.js";
import { repeatedName } from "./repeated-name.js";

/** What a body that is not valid is refused as. */
export type BodyRefusal = "invalid_scene" | "invalid_request";

/** What keeps bytes from being one JSON value. */
export type Unreadable = "empty" | "not_utf8" | "too_deep" | "not_json";

/** What a body says, or why it says nothing. */
export type JsonRead =
  | { status: "value"; value: unknown }
  | { status: "unreadable"; why: Unreadable }
  /** A name stands twice in its object. */
  | { status: "repeated"; pointer: string };

const utf8 = new TextDecoder("utf-8", { fatal: true });

/** Reads JSON in UTF-8 (RFC 8259, section 8.1), each name of an object once (RFC 7493, section 2.3). */
export function readJson(bytes: Uint8Array): JsonRead {
  let text: string;
  try {
    text = utf8.decode(bytes);
  } catch {
    return { status: "unreadable", why: "not_utf8" };
  }
  if (text === "") return { status: "unreadable", why: "empty" };
  if (isDeep(text, defaultLimits.bodyDepth)) return { status: "unreadable", why: "too_deep" };
  let value: unknown;
  try {
    // A member called `__proto__` becomes one like any other here, which no scene has, and is refused as such.
    value = JSON.parse(text);
  } catch {
    return { status: "unreadable", why: "not_json" };
  }
  const pointer = repeatedName(text);
  return pointer === undefined ? { status: "value", value } : { status: "repeated", pointer };
}

/** The problem of a name that stands twice. */
export function repeatedField(pointer: string, refusal: BodyRefusal, words: ProblemTexts): Problem {
  const code: FieldErrorCode = "repeated_field";
  const errors = [{ pointer, code, ...words.repeatedName }];
  return problem(refusal, words, words.details.invalid({ errors, more: false }), errors);
}
