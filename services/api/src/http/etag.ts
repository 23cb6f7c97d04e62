import { createHash } from "node:crypto";
import type { Encoding } from "./accept-encoding.js";

/** A strong entity tag (RFC 9110, section 8.8.3) that stands for `parts`, each told from the next. */
export function etagOf(...parts: string[]): string {
  const hash = createHash("sha256");
  for (const part of parts) hash.update(`${part.length}:${part}`);
  return `"${hash.digest("base64url").slice(0, 27)}"`;
}

/**
 * Whether `If-None-Match` names `etag`, or a compressed form of what it stands for (RFC 9110, section 13.1.2: compared weakly).
 * `*` is not looked at here. Looks for the tag in the list, which anybody may send thousands of entries in, instead of taking
 * the list apart.
 */
export function matches(ifNoneMatch: string | undefined, etag: string): boolean {
  if (ifNoneMatch === undefined) return false;
  const opened = etag.slice(0, -1);
  for (let at = ifNoneMatch.indexOf(opened); at !== -1; at = ifNoneMatch.indexOf(opened, at + 1)) {
    if (!begins(ifNoneMatch, at)) continue;
    for (const tag of [etag, encodedTag(etag, "gzip"), encodedTag(etag, "br")])
      if (ifNoneMatch.startsWith(tag, at) && ends(ifNoneMatch, at + tag.length)) return true;
  }
  return false;
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

/** Whether `tag` is that of a compressed form of what `etag` stands for. */
export const isEncodedTag = (tag: string, etag: string): boolean =>
  tag === encodedTag(etag, "gzip") || tag === encodedTag(etag, "br");
