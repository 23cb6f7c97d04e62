import { createHash } from "node:crypto";

/** A strong entity tag (RFC 9110, section 8.8.3) that stands for `parts`, each told from the next. */
export function etagOf(...parts: string[]): string {
  const hash = createHash("sha256");
  for (const part of parts) hash.update(`${part.length}:${part}`);
  return `"${hash.digest("base64url").slice(0, 27)}"`;
}

/** Whether `If-None-Match` names `etag` (RFC 9110, section 13.1.2: compared weakly). `*` is not looked at here. */
export function matches(ifNoneMatch: string | undefined, etag: string): boolean {
  if (ifNoneMatch === undefined) return false;
  return ifNoneMatch.split(",").some((candidate) => candidate.trim().replace(/^W\//, "") === etag);
}
