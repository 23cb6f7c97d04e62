import { describe, expect, it, vi } from "vitest";
import { encodedForm, etagOf, matches } from "./etag.js";

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

  it.each([
    ['"xyzzy-gzip"', '"xyzzy-gzip"'],
    ['W/"xyzzy-br" , "xyzzy-gzip"', '"xyzzy-br"'],
    ['"xyzzy", "xyzzy-gzip"', '"xyzzy-gzip"'],
    ['"xyzzy"', undefined],
    ['a"xyzzy-gzip"', undefined],
    ['"xyzzy-gzip-gzip"', undefined],
    [undefined, undefined],
  ])("of a compressed form is told from that of the plain one: %s names %s", (header, form) => {
    expect(encodedForm(header, '"xyzzy"')).toBe(form);
  });

  it("is found in a list without taking it apart", () => {
    const split = vi.spyOn(String.prototype, "split");
    const list = `${'"a",'.repeat(4000)}"xyzzy-br"`;
    expect(encodedForm(list, '"xyzzy"')).toBe('"xyzzy-br"');
    expect(matches(list, '"xyzzy"')).toBe(true);
    expect(split).not.toHaveBeenCalled();
    split.mockRestore();
  });
});
