import type { Language } from "@sunfathom/contract";
import { describe, expect, it } from "vitest";
import { languageIn, preferred } from "./language.js";

// What a header names need not be written yet: the rules of choosing are the same for any tags.
const among = (...tags: string[]) => tags as Language[];

describe("Accept-Language", () => {
  it.each([
    // RFC 9110, section 12.5.4: "I prefer Danish, but will accept British English and other types of English".
    ["da, en-gb;q=0.8, en;q=0.7", ["en", "da"], "da"],
    ["da, en-gb;q=0.8, en;q=0.7", ["de", "en"], "en"],
    // Section 12.4.2: without a weight it is 1, and 0 means not acceptable.
    ["en;q=0.5, de", ["en", "de"], "de"],
    ["de;q=0, *", ["de", "en"], "en"],
    ["fr;q=0.3, de;q=0.3", ["de", "fr"], "fr"],
    // RFC 4647, section 3.4: a range is shortened from its end until it fits; tags are compared whatever their case.
    ["de-CH-1996", ["en", "de"], "de"],
    ["zh-Hant-CN-x-private1-private2, DE-at;q=0.1", ["en", "de"], "de"],
    // A range that fits nothing gives way to the next one, and to the first language in the end.
    ["tlh, nl;q=0.9", ["en", "de"], "en"],
    ["*", ["en", "de"], "en"],
    ["", ["en", "de"], "en"],
    [", ;q=, de;q=high, -;-", ["en", "de"], "en"],
  ])("%j of %j is %s", (header, tags, wanted) => {
    expect(preferred(header, among(...tags))).toBe(wanted);
  });

  it("is not needed", () => {
    expect(preferred(undefined, among("en", "de"))).toBe("en");
  });

  it("of the length that a request may have takes no time to read", () => {
    const before = performance.now();
    preferred("de-CH;q=0.001,".repeat(1100), among("en", "de", "es", "fr"));
    expect(performance.now() - before).toBeLessThan(200);
  });
});

describe("a body", () => {
  it.each([
    [{ language: "en" }, "en"],
    [{ language: "tlh" }, undefined],
    [{ language: ["en"] }, undefined],
    [{}, undefined],
    [null, undefined],
    ["en", undefined],
  ])("%j asks for %s", (body, wanted) => {
    expect(languageIn(body)).toBe(wanted);
  });
});
