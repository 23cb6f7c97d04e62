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

  // Read whole it takes 3 ms, and any request may bring one.
  it("of the length that a request may have takes no time to read", () => {
    const list = "a,".repeat(7000);
    const before = process.cpuUsage();
    for (let round = 0; round < 200; round += 1) preferred(list, among("en", "de", "es", "fr"));
    const { user, system } = process.cpuUsage(before);
    expect((user + system) / 1000 / 200).toBeLessThan(1);
  });

  it("has its say with its beginning alone where it is long", () => {
    expect(preferred(`tlh,de${",a".repeat(7000)}`, among("en", "de"))).toBe("de");
    expect(preferred(`tlh${",a".repeat(7000)},de`, among("en", "de"))).toBe("en");
    // An entry that is cut is none.
    expect(preferred(`${"a,".repeat(255)}de-CH`, among("en", "de"))).toBe("en");
    expect(preferred("a".repeat(7000), among("en", "de"))).toBe("en");
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
