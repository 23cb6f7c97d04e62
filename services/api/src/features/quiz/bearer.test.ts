import { describe, expect, it } from "vitest";
import { bears, challenge } from "./bearer.js";

const key = "aB3-._~+/==";

// RFC 6750, section 2.1: credentials = "Bearer" 1*SP b64token; RFC 9110, section 11.1: the scheme has no case.
describe("an Authorization header", () => {
  it.each([`Bearer ${key}`, `bearer ${key}`, `BEARER ${key}`, `Bearer   ${key}`])(
    "%s brings the key",
    (header) => {
      expect(bears(header, key)).toBe(true);
    },
  );

  it.each([
    undefined,
    "",
    key,
    "Bearer",
    "Bearer ",
    `Basic ${key}`,
    `xBearer ${key}`,
    `Bearer ${key}=`,
    `Bearer ${key.slice(1)}`,
    `Bearer ${key} `,
    `Bearer\t${key}`,
    `Bearer${key}`,
    `Bearer ${key} ${key}`,
    `Bearer x Bearer ${key}`,
    `Bearer ${key.toLowerCase()}`,
    `Bearer ${key}\u00fc`,
  ])("%s does not", (header) => {
    expect(bears(header, key)).toBe(false);
  });
});

// RFC 6750, section 3 and 3.1: without authentication there is no error to tell.
it("a challenge names the realm, and an error only where something was brought", () => {
  expect(challenge(undefined)).toBe('Bearer realm="instructors"');
  expect(challenge("")).toBe('Bearer realm="instructors", error="invalid_token"');
  expect(challenge("Basic x")).toBe('Bearer realm="instructors", error="invalid_token"');
});
