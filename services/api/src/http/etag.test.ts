import { describe, expect, it } from "vitest";
import { etagOf, matches } from "./etag.js";

describe("an entity tag", () => {
  it("tells apart what differs, and where one part ends", () => {
    const tags = [etagOf("a", "b"), etagOf("b", "a"), etagOf("ab"), etagOf("a", "b", "")];
    expect(new Set(tags).size).toBe(tags.length);
    expect(etagOf("a", "b")).toBe(etagOf("a", "b"));
  });

  // RFC 9110, section 8.8.3: entity-tag = [ weak ] DQUOTE *etagc DQUOTE, without W/ a strong one.
  it("is strong", () => {
    expect(etagOf("a")).toMatch(/^"[\x21\x23-\x7e]+"$/);
  });

  // RFC 9110, section 13.1.2: its examples of If-None-Match.
  it.each([
    ['"xyzzy"', true],
    ['W/"xyzzy"', true],
    ['"xyzzy", "r2d2xxxx", "c3piozzzz"', true],
    ['W/"r2d2xxxx", W/"xyzzy", W/"c3piozzzz"', true],
    ['"r2d2xxxx"', false],
    ["xyzzy", false],
    ['a"xyzzy"', false],
    ['"xyzzy"a', false],
    ['aW/"xyzzy"', false],
    ['a"xyzzy","xyzzy"', true],
    [' \t"xyzzy" \t,', true],
    [`${",".repeat(9999)}W/"xyzzy"`, true],
    ["", false],
    [undefined, false],
  ])("is named by If-None-Match: %s is %s", (header, named) => {
    expect(matches(header, '"xyzzy"')).toBe(named);
  });
});
