// Nobody gains by how options look: over many questions, what a strategy picks is right within 5 points as often as any
// option. 200 questions here, where chance itself does something; 1000 in `blind.prove.ts`.

import { isProof } from "@sunfathom/fixtures/is-proof";
import { expect, it } from "vitest";
import { LANGUAGES, type Language } from "../messages/catalogue.js";
import { itemsFor } from "../paper/items-for.js";
import { TEMPLATES } from "../templates/table.js";
import { gain, STRATEGIES } from "./blind.test-support.js";
import { type Choice, LEVELS } from "./item.js";

const QUESTIONS = isProof ? 1000 : 200;
/** Three standard deviations of the mean, where a gain is spread by half at the most. */
const MOST = 0.05 + (isProof ? 0 : 1.5 / Math.sqrt(QUESTIONS));

const questionsIn = (language: Language): (readonly Choice[])[] => {
  const questions: (readonly Choice[])[] = [];
  for (let paper = 0; questions.length < QUESTIONS; paper++) {
    const level = LEVELS[paper % LEVELS.length] ?? "working";
    const templates = TEMPLATES.filter(
      ({ interaction, levels }) => /_choice$/.test(interaction) && levels.includes(level),
    ).map(({ id }) => id);
    const items = itemsFor({
      seed: `blind ${paper}`,
      level,
      count: templates.length,
      templates,
      units: "metric",
      language,
    });
    for (const item of items) if ("options" in item) questions.push(item.options);
  }
  return questions.slice(0, QUESTIONS);
};
const questions = new Map(LANGUAGES.map((language) => [language, questionsIn(language)]));
const cases = LANGUAGES.flatMap((language) =>
  Object.entries(STRATEGIES).map(([name, pick]) => [language, name, pick] as const),
);

it.each(cases)(
  "%s: %s gains nothing",
  (language, name, pick) => {
    const all = questions.get(language) ?? [];
    const mean = all.reduce((sum, options) => sum + gain(pick, options), 0) / all.length;
    if (isProof) console.info(`${language} ${name}: ${(100 * mean).toFixed(1)} points`);
    expect(Math.abs(mean)).toBeLessThanOrEqual(MOST);
  },
  600_000,
);
