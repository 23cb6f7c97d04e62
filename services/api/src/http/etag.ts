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
 * `*` is not looked at here.
 */
export function matches(ifNoneMatch: string | undefined, etag: string): boolean {
  if (ifNoneMatch === undefined) return false;
  return ifNoneMatch.split(",").some((candidate) => {
    const tag = candidate.trim().replace(/^W\//, "");
    return tag === etag || isEncodedTag(tag, etag);
  });
}

/** The tag of a compressed form: strong tags tell bytes apart. */
export const encodedTag = (etag: string, encoding: Encoding): string => `${etag.slice(0, -1)}-${encoding}"`;

/** Whether `tag` is that of a compressed form of what `etag` stands for. */
export const isEncodedTag = (tag: string, etag: string): boolean =>
  tag === encodedTag(etag, "gzip") || tag === encodedTag(etag, "br");
