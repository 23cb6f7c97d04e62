// A seed asks the same in every language: the same questions with the same keys, and only their texts differ. Those have the same
// figures, the terms of their language's glossary, nothing left in English, and about the same length. 4 questions of each
// template and level, 40 in `languages.prove.ts`.

import { isProof } from "@sunfathom/fixtures/is-proof";
import { expect, it } from "vitest";
import { terms } from "../../../words/src/glossary/terms.js";
import type { Item } from "../item/item.js";
import { CATALOGUES } from "../messages/catalogue.js";
import { TEMPLATES } from "../templates/table.js";
import { decidesMarks } from "../token/decides-marks.js";
import { itemsFor } from "./items-for.js";

const SEEDS = isProof ? 20 : 2;

const request = (template: string, seed: number) =>
  ({ seed: `said ${seed}`, count: 2, templates: [template], units: "metric_and_imperial" }) as const;
const cases = TEMPLATES.flatMap(({ id, levels }) => levels.map((level) => [id, level] as const));

/** All that decides nothing about texts. */
const unsaid = (item: Item) => {
  const { id, fingerprint, template, topic, level, basis, difficulty, origin } = item;
  return { id, fingerprint, template, topic, level, basis, difficulty, origin, marks: decidesMarks(item) };
};

/** Every text of a question and where it stands. Sources are references: their years and numbers are compared as they are. */
function textsOf(value: unknown, place = ""): [place: string, text: string][] {
  if (typeof value === "string") return [[place, value]];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) =>
    ["given", "origin", "svg", "sources", "value", "id", "misconception", "template", "unit"].includes(name)
      ? []
      : textsOf(part, `${place}/${name}`),
  );
}

/** With a decimal point and without a separator of thousands, in order of size: sentences turn around. */
const figuresIn = (text: string, decimal: "." | ","): string[] =>
  (
    (decimal === ","
      ? text.replace(/(\d)\.(?=\d{3}(?!\d))/g, "$1").replace(/(\d),(?=\d)/g, "$1.")
      : text
    ).match(/\d+(?:\.\d+)?/g) ?? []
  ).sort();

const pairs = new Map<string, string>();
it.each(cases)(
  "%s at level %s asks the same in each language, with the same figures",
  (template, level) => {
    for (let seed = 0; seed < SEEDS; seed++) {
      const asked = { ...request(template, seed), level };
      const english = itemsFor({ ...asked, language: "en" });
      const spanish = itemsFor({ ...asked, language: "es" });
      expect(spanish.map(unsaid)).toEqual(english.map(unsaid));
      english.forEach((item, i) => {
        const [first, second] = [textsOf(item), textsOf(spanish[i])];
        expect(second.map(([place]) => place)).toEqual(first.map(([place]) => place));
        first.forEach(([place, text], at) => {
          const other = second[at]?.[1] ?? "";
          expect(figuresIn(other, ","), `${template} ${place}\n${text}\n${other}`).toEqual(
            figuresIn(text, "."),
          );
          if (
            !/^\/(?:id|fingerprint|topic|level|basis|interaction|right_order|pairs|anticipated\/\d+\/order)/.test(
              place,
            )
          )
            pairs.set(text, other);
        });
      });
    }
  },
  600_000,
);

const all = (): [string, string][] => [...pairs];

it("leaves nothing in English", () => {
  expect(all().length).toBeGreaterThan(1000);
  // What is alike in both: figures, units, chemical or optical names.
  const same = all().filter(
    ([text, other]) =>
      text === other && /\p{L}{3}/u.test(text.replace(/^Factor \d+ \(ND\d+\)$|^Coral$|mired|ISO|log2/g, "")),
  );
  expect(same).toEqual([]);
  const left = all().filter(([, other]) =>
    /\b(?:the|and|of|with|water|light|stops?|is|from|at)\b/.test(other),
  );
  expect(left).toEqual([]);
});

it("writes decimals with a comma", () => {
  const points = all().filter(([, other]) => /\d\.\d(?!\d\d\b)/.test(other));
  expect(points).toEqual([]);
});

it("is neither half as long nor twice", () => {
  const odd = all().filter(
    ([text, other]) =>
      text.length > 40 && (other.length < 0.6 * text.length || other.length > 1.8 * text.length),
  );
  expect(odd).toEqual([]);
});

it.each(Object.entries(terms))("has a word of its own for %s", (_, forms) => {
  const missing = all().filter(([text, other]) => forms.en.test(text) && !forms.es.test(other));
  expect(missing).toEqual([]);
});

it("begins and ends texts as English does: a capital where it has one, a full stop where it has one", () => {
  const begins = (text: string): boolean => /^[¿¡]?\p{Lu}/u.test(text);
  const ends = (text: string): string => /[.?!]$/.exec(text)?.[0] ?? "";
  const odd = all().filter(
    ([text, other]) =>
      /^\p{L}/u.test(text) &&
      !text.startsWith("f-number") &&
      /^[¿\p{L}]/u.test(other) &&
      begins(text) !== begins(other),
  );
  expect(odd).toEqual([]);
  expect(all().filter(([text, other]) => ends(text) !== ends(other))).toEqual([]);
});

/** What each place of a catalogue is: a text, a list of so many, or a function of so many parameters. */
const shapeOf = (value: unknown): unknown => {
  if (typeof value === "function") return value.length;
  if (Array.isArray(value)) return value.map(shapeOf);
  if (typeof value !== "object" || value === null) return typeof value;
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, shapeOf(part)]));
};

it("has the same ways to say each thing, so that a seed picks the same one", () => {
  const { modelCitations: _, language: _l, thousands: _t, ...english } = CATALOGUES.en;
  const { modelCitations: __, language: __l, thousands: __t, ...spanish } = CATALOGUES.es;
  expect(shapeOf(spanish)).toEqual(shapeOf(english));
});

it("has a feedback of its own for each misconception", () => {
  const texts = Object.values(CATALOGUES.es.misconceptions);
  expect(new Set(texts).size).toBe(texts.length);
});
