// Guards that `units` turns the lengths of texts, all of them and nothing else: in feet no text names a metre, in metres none a foot,
// and the rest of an answer is the same to the byte.
import { describe, expect, it, vi } from "vitest";
import { operationsIn } from "../packages/answers/src/operations/table.js";
import { languages } from "../packages/contract/src/index.js";
import { de as cldrDe } from "../packages/words/src/cldr/de.js";
import { en as cldrEn } from "../packages/words/src/cldr/en.js";
import { es as cldrEs } from "../packages/words/src/cldr/es.js";
import { fr as cldrFr } from "../packages/words/src/cldr/fr.js";
import type { Cldr, UnitName } from "../packages/words/src/cldr/table.js";
import { de } from "../packages/words/src/de/index.js";
import { problems as deProblems } from "../packages/words/src/de/problems/index.js";
import { en } from "../packages/words/src/en/index.js";
import { problems as enProblems } from "../packages/words/src/en/problems/index.js";
import { es } from "../packages/words/src/es/index.js";
import { problems as esProblems } from "../packages/words/src/es/problems/index.js";
import { fr } from "../packages/words/src/fr/index.js";
import { problems as frProblems } from "../packages/words/src/fr/problems/index.js";
import { makeLight, makeMounting } from "./golden/scenes.js";

vi.mock("@sunfathom/planner", async (original) => {
  const { rememberingPlans } = await import("./support/remembered-plans.js");
  return rememberingPlans(await original());
});

const all = {
  en: { words: en, problems: enProblems, cldr: cldrEn },
  de: { words: de, problems: deProblems, cldr: cldrDe },
  es: { words: es, problems: esProblems, cldr: cldrEs },
  fr: { words: fr, problems: frProblems, cldr: cldrFr },
};

const everyNth = (scenes: object, nth: number): object[] =>
  Object.values(scenes).filter((_, index) => index % nth === 0);
const scenesOf = { Scene: everyNth(makeLight(), 20), MountingScene: everyNth(makeMounting(), 4) };

/** What stands behind a length; "20 % in green" is none. */
const behind = /(?=[.,;:)]|$| (?:from|of|away|in front|on|vo[nmr]|Abstand|del?|du|devant|à)(?!\p{L}))/u
  .source;

/** Lengths in a text, by the names that the language's CLDR table has for their units. */
function lengthsIn(text: string, { units }: Cldr, names: readonly UnitName[]): string[] {
  return names.flatMap((name) => {
    const sign = units[name].replace("{0}", "").trim();
    return text.match(new RegExp(`\\d\\s?${sign}${name === "in" ? behind : "(?![\\p{L}²³/])"}`, "gu")) ?? [];
  });
}

/** Numbers in their order, whatever sets off decimals. */
const numbersIn = (text: string): number[] =>
  (text.match(/\d+(?:[.,]\d+)?/g) ?? []).map((number) => Number(number.replace(",", ".")));

/**
 * Whether a figure in feet or inches is one in metres or centimetres, or the same figure: 1 ft is 0.3048 m and 1 in 2.54 cm, exactly
 * (NIST Special Publication 811, 2008, appendix B.8). Each has been rounded on its own, so they differ by half a step of each at most.
 */
function isSame(metric: number, imperial: number): boolean {
  const near = (value: number, step: number, from: number) => Math.abs(value - from) <= step + 1e-9;
  const metreStep = Number.isInteger(metric) ? 0.5 : 0.25;
  return (
    metric === imperial ||
    near(imperial * 0.3048, metreStep + 0.5 * 0.3048, metric) ||
    near(imperial * 0.0254, 0.05 + 0.5 * 0.0254, metric) ||
    near(imperial * 2.54, 0.5 + 0.25 * 2.54, metric)
  );
}

type Pair = [metric: string, imperial: string];

/** Texts that differ. All else must not. */
function differing(metric: unknown, imperial: unknown, place = ""): Pair[] {
  if (typeof metric === "string" && metric !== imperial) {
    expect(place).toMatch(/(text|why|summary|procedure\/\d+)$/);
    return [[metric, String(imperial)]];
  }
  if (typeof metric !== "object" || metric === null) {
    // An expectation costs more than the look: what is the same needs none.
    if (!Object.is(imperial, metric)) expect(imperial, place).toBe(metric);
    return [];
  }
  if (Object.keys(imperial as object).join() !== Object.keys(metric).join())
    expect(Object.keys(imperial as object), place).toEqual(Object.keys(metric));
  return Object.entries(metric).flatMap(([name, value]) =>
    differing(value, (imperial as Record<string, unknown>)[name], `${place}/${name}`),
  );
}

/** Every text of an answer; what the caller sent, and parameters, are none. */
const textsIn = (value: unknown): string[] =>
  typeof value === "string"
    ? [value]
    : typeof value === "object" && value !== null
      ? Object.entries(value).flatMap(([name, item]) =>
          name === "scene" || name === "model" || name === "parameters" ? [] : textsIn(item),
        )
      : [];

describe.each(languages)("in %s", (language) => {
  const { words, problems, cldr } = all[language];
  const operations = operationsIn(words, problems);
  const differ: Pair[] = [];
  const inInches: string[] = [];

  it.each(operations)(
    "$name has its lengths in feet where they are asked for",
    { timeout: 120_000 },
    (of) => {
      for (const scene of scenesOf[of.request]) {
        const [metric, imperial, plain] = [{ units: "metric" }, { units: "imperial" }, {}].map((asked) => {
          const replied = of.reply({ ...scene, ...asked });
          return JSON.stringify(replied.status === "ok" ? replied.body : replied.problem);
        });
        expect(plain).toBe(metric);
        // Some scenes have no answer, and that is the same.
        if (metric === imperial) continue;
        const [first, second] = [metric, imperial].map((text) => JSON.parse(text ?? "") as unknown);
        expect(textsIn(first).flatMap((text) => lengthsIn(text, cldr, ["ft", "in"]))).toEqual([]);
        expect(textsIn(second).flatMap((text) => lengthsIn(text, cldr, ["m", "cm"]))).toEqual([]);
        differ.push(...differing(first, second));
        inInches.push(...textsIn(second).flatMap((text) => lengthsIn(text, cldr, ["in"])));
      }
    },
  );

  it("says the same lengths, short ones in inches", () => {
    expect(inInches.length).toBeGreaterThan(10);
    expect(new Set(differ.map(([metric]) => metric)).size).toBeGreaterThan(100);
    // Depths that are one in metres may be two in feet.
    const alike = differ.filter(
      ([metric, imperial]) => numbersIn(metric).length === numbersIn(imperial).length,
    );
    expect(alike.length).toBeGreaterThan(0.9 * differ.length);
    for (const [metric, imperial] of alike) {
      const turned = numbersIn(imperial);
      for (const [index, number] of numbersIn(metric).entries())
        expect(isSame(number, turned[index] ?? Number.NaN), `${metric}\n${imperial}`).toBe(true);
    }
  });
});

it("a problem names lengths as the fields do that it is about", () => {
  const [attenuation] = operationsIn(en, enProblems);
  const scene = { water_type: "IB", min_depth_m: 12, max_depth_m: 5, units: "imperial" };
  const replied = attenuation?.reply(scene);
  expect(replied?.status === "problem" && replied.problem.errors).toEqual([
    expect.objectContaining({ pointer: "/min_depth_m", allowed: "at most 5 m" }),
  ]);
});
