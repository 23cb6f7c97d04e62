// Texts are plain English, as people of the trade say it: the house's page on words, as patterns.
import { describe, expect, it } from "vitest";
import { faultsOf, patterns } from "./support/english.js";
import { type Area, areas, textsOf, textsOfCode, textsOfMarkdown } from "./support/texts-to-read.js";

/** Areas that still have such patterns. One that has none has to go from here. */
const notMendedYet: readonly Area[] = [];

describe("each pattern", () => {
  it.each(patterns)("catches $sample", ({ refuses, sample, lets, say }) => {
    expect(faultsOf(sample).map((fault) => fault.say)).toContain(say);
    expect(refuses.test(sample)).toBe(true);
    expect(faultsOf(lets)).toEqual([]);
  });
});

it("reads strings of code, with what they fill in, and leaves out what stands between backticks", () => {
  const source = "`It takes $" + '{stops(p.red)} of red.`; "one"; "The `lamp` leads."; "two words";';
  const texts = textsOfCode(source).map(({ text }) => text);
  expect(texts).toEqual(["It takes {stops} of red.", "The `lamp` leads.", "two words"]);
  expect(texts.flatMap(faultsOf)).toMatchObject([{ found: "takes {stops}" }]);
});

it("reads the lines of Markdown, not its code", () => {
  const page = "# A\n\n```sh\nlamp\n```\n    lamp\n[a lamp](lamp.md), `lamps`\n";
  expect(textsOfMarkdown(page)).toEqual([
    { line: 1, text: "# A" },
    { line: 7, text: "[a lamp], `lamps`" },
  ]);
});

describe("texts", () => {
  const faultsIn = (area: Area) =>
    textsOf(area).flatMap(({ where, text }) =>
      faultsOf(text).map(({ found, say }) => `${where}: "${found}" in "${text}": say ${say}`),
    );

  it.each(Object.keys(areas) as Area[])("of %s are read", (area) => {
    expect(textsOf(area).length).toBeGreaterThan(5);
  });

  it.each((Object.keys(areas) as Area[]).filter((area) => !notMendedYet.includes(area)))(
    "of %s have none of the patterns",
    (area) => {
      expect(faultsIn(area)).toEqual([]);
    },
  );

  it.skipIf(notMendedYet.length === 0).each([...notMendedYet])("of %s have some yet", (area) => {
    expect(faultsIn(area)).not.toEqual([]);
  });
});
