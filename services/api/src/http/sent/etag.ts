import { createHash } from "node:crypto";
import type { Encoding } from "../asked/accept-encoding.js";

/** A strong entity tag (RFC 9110, section 8.8.3) that stands for `parts`, each told from the next. */
export function etagOf(...parts: string[]): string {
  const hash = createHash("sha256");
  for (const part of parts) hash.update(`${part.length}:${part}`);
  // 120 bits: no two answers share them, and they leave room under 500 bytes of headers.
  return `"${hash.digest("base64url").slice(0, 20)}"`;
}

/**
 * Whether `If-None-Match` names `etag`, or a compressed form of what it stands for (RFC 9110, section 13.1.2: compared weakly).
 * `*` is not looked at here.
 */
export function matches(ifNoneMatch: string | undefined, etag: string): boolean {
  return named(ifNoneMatch, etag, [etag, ...encodedTags(etag)]) !== undefined;
}

/** The tag of the first compressed form that `If-None-Match` names of what `etag` stands for. */
export function encodedForm(ifNoneMatch: string | undefined, etag: string): string | undefined {
  return named(ifNoneMatch, etag, encodedTags(etag));
}

/**
 * The first of `tags` that stands in a list, all of which begin as `etag` does. Looks for them in the list, which anybody may
 * send thousands of entries in, instead of taking the list apart.
 */
function named(list: string | undefined, etag: string, tags: readonly string[]): string | undefined {
  if (list === undefined) return undefined;
  const opened = etag.slice(0, -1);
  for (let at = list.indexOf(opened); at !== -1; at = list.indexOf(opened, at + 1)) {
    if (!begins(list, at)) continue;
    const tag = tags.find((form) => list.startsWith(form, at) && ends(list, at + form.length));
    if (tag !== undefined) return tag;
  }
  return undefined;
}

/** Whether an entry begins at a place: behind a comma or at the start, blanks and `W/` aside. */
function begins(list: string, place: number): boolean {
  let at = place;
  if (at >= 2 && list.startsWith("W/", at - 2)) at -= 2;
  while (at > 0 && isBlank(list[at - 1])) at -= 1;
  return at === 0 || list[at - 1] === ",";
}

function ends(list: string, place: number): boolean {
  let at = place;
  while (at < list.length && isBlank(list[at])) at += 1;
  return at === list.length || list[at] === ",";
}

const isBlank = (character: string | undefined) => character === " " || character === "\t";

/** The tag of a compressed form: strong tags tell bytes apart. */
export const encodedTag = (etag: string, encoding: Encoding): string => `${etag.slice(0, -1)}-${encoding}"`;

const encodedTags = (etag: string): string[] => [encodedTag(etag, "gzip"), encodedTag(etag, "br")];
