import { mountingRuleConcerns, type Problem, type SceneName, sceneRuleConcerns } from "@sunfathom/contract";
import type { SceneProblemTexts } from "@sunfathom/words";
import type { Refused } from "../operations/outcome.js";
import { type Concerns, checkScene } from "../validate/check-scene.js";
import { checkOfScene } from "../validate/checker.js";
import { otherModel } from "./other-model.js";
import { type OutsideTexts, outsideTheModel } from "./outside-the-model.js";
import { invalidScene, type RuleTexts } from "./problem.js";
import type { Kept, Refusal } from "./refusal.js";

/** For each kind of scene what the rules between its fields concern, the texts for what breaks one, and for what the model can refuse of it. */
const textsFor = (
  component: SceneName,
  words: SceneProblemTexts,
): { concerns: Concerns; rules: RuleTexts; outside: OutsideTexts } => {
  switch (component) {
    case "Scene":
      return { concerns: sceneRuleConcerns, rules: words.lightRules, outside: words.outsideLight };
    case "MountingScene":
      return { concerns: mountingRuleConcerns, rules: words.mountingRules, outside: words.outsideMounting };
  }
};

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
      const { refused, kind, field } = refusal;
      const { outside: texts } = textsFor(kind.component, words);
      return outsideTheModel(refused, { titles: words.titles, texts }, field);
    }
  }
}

function explained(
  { kind, raw, found }: Refusal & { code: "invalid_scene" },
  words: SceneProblemTexts,
): Problem {
  const { component, schema, rules }: Kept = kind;
  const { concerns, rules: texts } = textsFor(component, words);
  const checked = checkScene<never>({ check: checkOfScene(schema), rules, concerns }, raw, found);
  if ("scene" in checked) throw new Error(`Nothing is wrong with ${JSON.stringify(raw)}.`);
  return invalidScene(checked.findings, words, texts);
}

/** Puts refusals into words at once. */
export const said =
  (words: SceneProblemTexts) =>
  (refusal: Refusal): Refused => ({ status: "problem", problem: sayRefusal(refusal, words) });
