// Guards that whatever a question is about brings its cautions: they are common practice, no published source.
import { type Advice, CAUTIONS_OF } from "@sunfathom/planner";
import { describe, expect, it } from "vitest";
import { type Item, LEVELS } from "../item/item.js";
import { LANGUAGES } from "../messages/catalogue.js";
import { itemsFor } from "../paper/items-for.js";
import { packageFiles } from "../qti/package-files.js";
import { TEMPLATES } from "../templates/table.js";
import { cautionsOf, ownCautions } from "./cautions-of.js";

/** Words in a question, its answers or its feedback that speak of what calls for cautions. */
const SPEAKS_OF: Partial<Record<Advice, RegExp>> = {
  light: /\blamps?\b|\bvideo lights?\b/i,
  balance: /\bbalanc\w* (?:on|to) (?:a|the) card\b|\bbalance on\b|\bcard\b/i,
  way_up: /"Film (?:such a subject )?at \d/,
  filter_under_water: /\bswing\w* (?:a|the)\b|at depth\. Where does it go/i,
};

/** All that learners read of a question, but for misunderstandings, which no question advises. */
const readIn = (item: Item): string =>
  JSON.stringify([
    item.stem,
    item.solution.steps,
    "options" in item ? item.options.filter(({ right }) => right).map(({ text }) => text) : [],
    "entries" in item ? item.entries : [],
  ]);

const items = LEVELS.flatMap((level) =>
  Array.from({ length: 4 }, (_, i) =>
    itemsFor({ seed: `cautions ${i}`, level, count: 90, units: "metric", language: "en" }),
  ).flat(),
);

describe.each(Object.entries(SPEAKS_OF) as [Advice, RegExp][])(
  "a question that speaks of %s",
  (advice, words) => {
    const speaking = items.filter((item) => words.test(readIn(item)));

    it("brings its cautions in the same answer", () => {
      expect(speaking.length).toBeGreaterThan(3);
      for (const item of speaking) {
        const codes = cautionsOf([item], "en").map(({ code }) => code);
        expect(codes, `${item.template}: ${readIn(item)}`).toEqual(
          expect.arrayContaining([...CAUTIONS_OF[advice]]),
        );
      }
    });
  },
);

it("every paper says first that this is light and colour, and training decides the dive", () => {
  for (const { id } of TEMPLATES) {
    const [first, ...more] = cautionsOf([{ template: id }], "en");
    expect(first?.code).toBe("not_a_dive_planner");
    expect(first?.text).toMatch(/training/);
    expect(more).toEqual(ownCautions({ template: id }, "en"));
    expect(cautionsOf([{ template: id }], "es")[0]?.text).toMatch(/formación/);
  }
});

it("a paper gives each caution of its questions once", () => {
  const codes = cautionsOf(items, "en").map(({ code }) => code);
  expect(new Set(codes).size).toBe(codes.length);
  for (const item of items) for (const { code } of ownCautions(item, "en")) expect(codes).toContain(code);
});

const packages = (["3.0", "2.1"] as const).flatMap((version) =>
  LANGUAGES.map((language) => [version, language] as const),
);
describe.each(packages)("a package of QTI %s in %s", (version, language) => {
  const packed = itemsFor({
    seed: "cautions",
    level: "beginner",
    count: 24,
    units: "metric",
    language,
  });
  const files = [...packageFiles(packed, { version, language, title: "Colour", keys: false })];
  const rubricsIn = (path: string) => {
    const { content = "" } = files.find((file) => file.path === path) ?? {};
    return [
      ...content.matchAll(/<(?:qti-rubric-block|rubricBlock) [^>]*view="candidate".*?rubric-?block>/gis),
    ]
      .map(([block]) => block)
      .join();
  };

  it("shows the paper's cautions before its questions", () => {
    for (const { text } of cautionsOf(packed, language)) expect(rubricsIn("test.xml")).toContain(text);
  });

  it("shows a question its own", () => {
    const warned = packed.filter((item) => ownCautions(item, language).length > 0);
    expect(warned.length).toBeGreaterThan(5);
    for (const item of warned)
      for (const { text } of ownCautions(item, language))
        expect(rubricsIn(`items/${item.id}.xml`)).toContain(text);
  });
});
