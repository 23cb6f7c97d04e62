// Guards that each language says what the English does: the same figures and field names in each text, the same cautions, the
// terms of its own glossary, nothing left untranslated, and about the same length.
import { describe, expect, it, vi } from "vitest";
import { operationsIn } from "../packages/answers/src/operations/table.js";
import { type Language, languages } from "../packages/contract/src/index.js";
import { mountingCases } from "../packages/contract/src/rules/mounting-cases.test-support.js";
import { sceneCases } from "../packages/contract/src/rules/scene-cases.test-support.js";
import { de } from "../packages/words/src/de/index.js";
import { problems as deProblems } from "../packages/words/src/de/problems/index.js";
import { en } from "../packages/words/src/en/index.js";
import { problems as enProblems } from "../packages/words/src/en/problems/index.js";
import { es } from "../packages/words/src/es/index.js";
import { problems as esProblems } from "../packages/words/src/es/problems/index.js";
import { fr } from "../packages/words/src/fr/index.js";
import { problems as frProblems } from "../packages/words/src/fr/problems/index.js";
import { terms } from "../packages/words/src/glossary/terms.js";
import type { ProblemTexts, Words } from "../packages/words/src/index.js";
import { makeLight, makeMounting } from "./golden/scenes.js";
import { outsideScenes } from "./support/outside-scenes.js";
import { refusalSamples } from "./support/refusal-samples.js";

vi.mock("@sunfathom/planner", async (original) => {
  const { rememberingPlans } = await import("./support/remembered-plans.js");
  return rememberingPlans(await original());
});

const all: Readonly<Record<Language, { words: Words; problems: ProblemTexts }>> = {
  en: { words: en, problems: enProblems },
  de: { words: de, problems: deProblems },
  es: { words: es, problems: esProblems },
  fr: { words: fr, problems: frProblems },
};
const others = languages.filter((language) => language !== "en");

const everyNth = (scenes: object, nth: number): object[] =>
  Object.values(scenes).filter((_, index) => index % nth === 0);
const scenesOf = {
  Scene: [...everyNth(makeLight(), 12), ...refused(sceneCases)],
  MountingScene: [...everyNth(makeMounting(), 4), ...refused(mountingCases)],
};

function refused(cases: object): object[] {
  return Object.values(cases as Record<string, { refuses: [object, unknown][] }>).flatMap(({ refuses }) =>
    refuses.map(([scene]) => scene),
  );
}

type Pair = [english: string, other: string];

/** Texts that stand at the same place. What is no text is the same in every language. */
function pairsOf(english: unknown, other: unknown, place = ""): Pair[] {
  if (typeof english === "string") {
    if (!english.includes(" ") && english === other) return [];
    return [[english, String(other)]];
  }
  if (typeof english !== "object" || english === null) {
    // An expectation costs more than the look: what is the same needs none.
    if (!Object.is(other, english)) expect(other, place).toBe(english);
    return [];
  }
  if (Object.keys(other as object).join() !== Object.keys(english).join())
    expect(Object.keys(other as object), place).toEqual(Object.keys(english));
  return Object.entries(english).flatMap(([name, value]) =>
    // What the caller sent, and names, are nobody's texts.
    name === "scene" || name === "model" || name === "parameters" || name === "did_you_mean"
      ? []
      : pairsOf(value, (other as Record<string, unknown>)[name], `${place}/${name}`),
  );
}

/** Digits and thirds in a text, however it sets off decimals, thousands and dates. Once, twice and years' days are words or turn around. */
const figuresIn = (text: string): string[] =>
  (
    text
      .replace(/(\d{4})-(\d{2})-(\d{2})/g, "$3.$2.$1")
      .replace(/(\d)[.,\u00a0\u202f](?=\d{3}(?!\d))/g, "$1")
      .match(/[\d⅓⅔]+/g) ?? []
  ).sort();

const namesIn = (text: string): string[] =>
  [...new Set(text.match(/\b[a-z]+(?:_[a-zA-Z0-9]+)+\b/g) ?? [])].sort();

/** What an operation of a language answers to a scene. */
const answer = (operation: ReturnType<typeof operationsIn>[number], scene: object): unknown => {
  const replied = operation.reply(scene);
  return JSON.parse(JSON.stringify(replied.status === "ok" ? replied.body : replied.problem));
};

/** The English answers to the scenes of each operation, which every other language is held against. */
const english = operationsIn(en, enProblems).map((operation) => {
  let answered: [scene: object, answer: unknown][] | undefined;
  return {
    name: operation.name,
    answers: () => {
      answered ??= [...scenesOf[operation.request], ...(outsideScenes[operation.name] ?? [])].map((scene) => [
        scene,
        answer(operation, scene),
      ]);
      return answered;
    },
  };
});

describe.each(others)("in %s", (language) => {
  const said = {} as Record<string, Pair[]>;
  const { words, problems } = all[language];
  const spoken = operationsIn(words, problems);

  it.each(english)("$name says the same of every scene", ({ name, answers }) => {
    const operation = spoken.find((entry) => entry.name === name);
    if (operation === undefined) throw new Error(name);
    const pairs = answers().flatMap(([scene, first]) => pairsOf(first, answer(operation, scene)));
    said[name] = [...new Map(pairs.map((pair) => [pair[0], pair])).values()];
    expect(said[name].length).toBeGreaterThan(20);
  });

  it("says every refusal that no scene meets", () => {
    said["refusals"] = Object.entries(refusalSamples).flatMap(([part, byCode]) =>
      Object.entries(byCode).flatMap(([code, samples]) =>
        (samples as readonly unknown[]).flatMap((parameters) => {
          const [first, second] = [enProblems, problems].map((texts) => {
            const say = (texts[part as keyof typeof refusalSamples] as Record<string, unknown>)[code];
            return (say as (parameters: unknown) => unknown)(parameters);
          });
          return pairsOf(first, second);
        }),
      ),
    );
    said["titles"] = pairsOf(enProblems.titles, problems.titles);
    expect(said["refusals"].length).toBeGreaterThan(80);
  });

  const each = () => Object.values(said).flat();

  it("leaves nothing in English", () => {
    expect(each().filter(([text, other]) => text === other && text.includes(" "))).toEqual([]);
  });

  it("has the same figures and names of fields in each text", () => {
    const parts = (text: string) => ({ figures: figuresIn(text), names: namesIn(text) });
    for (const [text, other] of each()) expect(parts(other), `${text}\n${other}`).toEqual(parts(text));
  });

  it("is neither half as long nor twice", () => {
    const long = each().filter(([text]) => text.length > 40);
    const odd = long.filter(
      ([text, other]) => other.length < 0.6 * text.length || other.length > 1.8 * text.length,
    );
    expect(odd).toEqual([]);
  });

  it.each(Object.entries(terms))("has a word of its own for %s", (_, forms) => {
    const missing = each().filter(([text, other]) => forms.en.test(text) && !forms[language].test(other));
    expect(missing).toEqual([]);
  });

  it("has every caution, none of them shorter than what it warns of", () => {
    const warnings = Object.entries({ ...en["filter-mounting"].cautions });
    const own = words["filter-mounting"].cautions as Record<string, string>;
    for (const [code, text] of warnings) {
      expect(own[code]?.length, code).toBeGreaterThan(0.7 * text.length);
      expect(own[code]).toMatch(/\.$/);
    }
  });
});
