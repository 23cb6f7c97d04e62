// Guards that whatever advises a light, a depth on the way up, a balance, coming closer or changing a filter has its caution in words in
// the same answer, in every language: the same cautions as in English, none of them empty, and none left in English.
import { describe, expect, it } from "vitest";
import { say as sayAttenuation } from "../packages/answers/src/operations/calculations/attenuation.js";
import { say as sayRecovery } from "../packages/answers/src/operations/calculations/colour-recovery.js";
import { say as sayExposure } from "../packages/answers/src/operations/calculations/exposure-loss.js";
import { say as sayChoice } from "../packages/answers/src/operations/calculations/filter-choice.js";
import { say as sayMounting } from "../packages/answers/src/operations/calculations/filter-mounting.js";
import { say as sayMixed } from "../packages/answers/src/operations/calculations/mixed-light.js";
import { say as sayBalance } from "../packages/answers/src/operations/calculations/white-balance.js";
import { sayPlan as sayAdvice } from "../packages/answers/src/operations/say-plan.js";
import { type Language, languages } from "../packages/contract/src/index.js";
import { ASKED, MOUNTED, SCENES } from "../packages/planner/src/cautions/advice-scenes.test-support.js";
import { type Advised, CLASSIFIED } from "../packages/planner/src/cautions/classified.test-support.js";
import {
  attenuation,
  colourRecovery,
  diveAdvice,
  exposureLoss,
  filterChoice,
  filterMounting,
  mixedLight,
  type Scene,
  whiteBalance,
} from "../packages/planner/src/index.js";
import { de, pictures as dePictures } from "../packages/words/src/de/index.js";
import { en, pictures as enPictures } from "../packages/words/src/en/index.js";
import { es, pictures as esPictures } from "../packages/words/src/es/index.js";
import { fr, pictures as frPictures } from "../packages/words/src/fr/index.js";
import type { Words } from "../packages/words/src/index.js";

const all: Readonly<Record<Language, { words: Words; caution: string }>> = {
  en: { words: en, caution: enPictures.caution },
  de: { words: de, caution: dePictures.caution },
  es: { words: es, caution: esPictures.caution },
  fr: { words: fr, caution: frPictures.caution },
};

interface Said {
  from: string;
  answer: { cautions: { code: string; text: string }[] };
}

/** An answer, worked out once, in the words of any language. */
type Answered = (words: Words) => Said;

function answersTo(scene: Scene): Answered[] {
  const planned = {
    attenuation: attenuation(scene),
    choice: filterChoice(scene),
    recovery: colourRecovery(scene),
    exposure: exposureLoss(scene),
    mixed: mixedLight(scene),
    balance: whiteBalance(scene),
    advice: diveAdvice(scene),
  };
  return [
    (words) => ({ from: "attenuation", answer: sayAttenuation(planned.attenuation, words.attenuation) }),
    (words) => ({ from: "filter-choice", answer: sayChoice(planned.choice, words["filter-choice"]) }),
    (words) => ({ from: "colour-recovery", answer: sayRecovery(planned.recovery, words["colour-recovery"]) }),
    (words) => ({ from: "exposure-loss", answer: sayExposure(planned.exposure, words["exposure-loss"]) }),
    (words) => ({ from: "mixed-light", answer: sayMixed(planned.mixed, words["mixed-light"]) }),
    (words) => ({ from: "white-balance", answer: sayBalance(planned.balance, words["white-balance"]) }),
    (words) => ({ from: "dive-advice", answer: sayAdvice(planned.advice, words["dive-advice"]) }),
  ];
}

const answers: readonly Answered[] = [
  ...SCENES.flatMap(answersTo),
  ...MOUNTED.map((scene): Answered => {
    const planned = filterMounting(scene);
    return (words) => ({ from: "filter-mounting", answer: sayMounting(planned, words["filter-mounting"]) });
  }),
];

/** Codes of reasons, steps and ways beside which a text stands. */
function codesIn(value: unknown): { code: string; text: string }[] {
  if (typeof value !== "object" || value === null) return [];
  const { code, text } = value as { code?: unknown; text?: unknown };
  const own = typeof code === "string" && typeof text === "string" ? [{ code, text }] : [];
  return [...own, ...Object.values(value).flatMap(codesIn)];
}

const { reasons, mountingReasons, steps } = CLASSIFIED;
const advised: Readonly<Record<string, readonly Advised[]>> = { ...reasons, ...mountingReasons, ...steps };

describe.each(languages)("in %s", (language) => {
  const { words, caution } = all[language];

  it("each answer has the cautions that it has in English, in words of its own", () => {
    for (const answered of answers) {
      const [english, own] = [answered(en), answered(words)];
      const codes = ({ answer }: Said) => answer.cautions.map(({ code }) => code);
      expect(codes(own), own.from).toEqual(codes(english));
      for (const [index, { code, text }] of own.answer.cautions.entries()) {
        expect(text, code).toMatch(/\S.*[.]$/s);
        if (language !== "en") expect(text, code).not.toBe(english.answer.cautions[index]?.text);
      }
    }
  });

  it("each text that advises something stands beside the caution for it", () => {
    let walked = 0;
    for (const answered of answers) {
      const { from, answer } = answered(words);
      const given = answer.cautions.filter(({ text }) => text.trim() !== "").map(({ code }) => code);
      for (const { code, text } of codesIn({ ...answer, cautions: [] }))
        for (const advice of advised[code] ?? []) {
          walked += 1;
          expect(text.trim(), code).not.toBe("");
          const isGiven = ASKED[advice].some((codes) => codes.every((asked) => given.includes(asked)));
          expect(
            isGiven,
            `${from}: ${code} advises ${advice}, and the cautions are ${given.join(", ")}`,
          ).toBe(true);
        }
    }
    expect(walked).toBeGreaterThan(500);
  });

  it("no two cautions are the same, nor are those of pictures another language's", () => {
    const own = Object.values({ ...words["dive-advice"].cautions, ...words["filter-mounting"].cautions });
    expect(new Set(own).size).toBe(own.length);
    const pictures = languages.map((each) => all[each].caution);
    expect(new Set(pictures).size).toBe(languages.length);
    expect(caution).toMatch(/\S.*[.]$/);
  });
});
