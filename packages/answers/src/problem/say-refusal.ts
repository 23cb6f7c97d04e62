import { mountingRuleConcerns, type Problem, sceneRuleConcerns } from "@sunfathom/contract";
import type { SceneProblemTexts } from "@sunfathom/words";
import type { Refused } from "../operations/outcome.js";
import { type Concerns, checkScene } from "../validate/check-scene.js";
import { checkOfScene } from "../validate/checker.js";
import { otherModel } from "./other-model.js";
import { type OutsideTexts, outsideTheModel } from "./outside-the-model.js";
import { invalidScene, type RuleTexts } from "./problem.js";
import type { Kept, Refusal } from "./refusal.js";

interface Texts {
  concerns: Concerns;
  rules: RuleTexts;
  outside: OutsideTexts;
}

/** By the language they are of: put together once, as there are hundreds of them, and thousands of scenes in a batch may be wrong. */
const made = new WeakMap<SceneProblemTexts, Texts>();

/**
 * What the rules between fields concern, the texts for what is wrong with a value or breaks a rule, and for what the model can refuse: a
 * scene of light may say what its filter is mounted on.
 */
function textsFor(words: SceneProblemTexts): Texts {
  const texts = made.get(words) ?? {
    concerns: { ...mountingRuleConcerns, ...sceneRuleConcerns },
    rules: { ...words.checks, ...words.mountingRules, ...words.lightRules },
    outside: { ...words.outsideMounting, ...words.outsideLight },
  };
  made.set(words, texts);
  return texts;
}

/**
 * A refusal in the words of one language.
 * @throws where there are no words for it: then the program is wrong
 */
export function sayRefusal(refusal: Refusal, words: SceneProblemTexts): Problem {
  switch (refusal.code) {
    case "invalid_scene":
      return explained(refusal, words);
    case "model_version_mismatch":
      return otherModel(refusal, words);
    case "outside_the_model": {
      const { refused, field } = refusal;
      const { outside: texts } = textsFor(words);
      return outsideTheModel(refused, { titles: words.titles, texts }, field);
    }
  }
}

function explained(
  { kind, raw, found }: Refusal & { code: "invalid_scene" },
  words: SceneProblemTexts,
): Problem {
  const { schema, rules }: Kept = kind;
  const { concerns, rules: texts } = textsFor(words);
  const checked = checkScene<never>({ check: checkOfScene(schema), rules, concerns }, raw, found);
  if ("scene" in checked) throw new Error(`Nothing is wrong with ${JSON.stringify(raw)}.`);
  return invalidScene(checked.findings, words, texts);
}

/** Puts refusals into words at once. */
export const said =
  (words: SceneProblemTexts) =>
  (refusal: Refusal): Refused => ({ status: "problem", problem: sayRefusal(refusal, words) });
