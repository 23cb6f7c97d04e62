import { createHash, timingSafeEqual } from "node:crypto";

const digest = (text: string) => createHash("sha256").update(text).digest();

/** Whether an `Authorization` header brings the key (RFC 6750, section 2.1). Takes as long for any wrong one. */
export function bears(header: string | undefined, key: string): boolean {
  const given = /^bearer +([\x21-\x7e]+)$/i.exec(header ?? "")?.[1];
  return given !== undefined && timingSafeEqual(digest(given), digest(key));
}

/** What to send to whoever does not bring it (RFC 6750, section 3): an error only where something was brought. */
export function challenge(header: string | undefined): string {
  return `Bearer realm="instructors"${header === undefined ? "" : ', error="invalid_token"'}`;
}
