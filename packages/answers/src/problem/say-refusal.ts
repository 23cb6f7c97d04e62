import type { Problem, SceneName } from "@sunfathom/contract";
import { mountingRuleTexts, outsideLight, outsideMounting, sceneRuleTexts } from "@sunfathom/words";
import type { Refused } from "../operations/outcome.js";
import { checkScene } from "../validate/check-scene.js";
import { checkOfScene } from "../validate/checker.js";
import { otherModel } from "./other-model.js";
import { type OutsideTexts, outsideTheModel } from "./outside-the-model.js";
import { invalidScene, type RuleTexts } from "./problem.js";
import type { Kept, Refusal } from "./refusal.js";

/** For each kind of scene the texts for what breaks a rule between its fields, and for what the model can refuse of it. */
const texts: Readonly<Record<SceneName, { rules: RuleTexts; outside: OutsideTexts }>> = {
  Scene: { rules: sceneRuleTexts, outside: outsideLight },
  MountingScene: { rules: mountingRuleTexts, outside: outsideMounting },
};

/**
 * A refusal in words.
 * @throws where there are no words for it: then the program is wrong
 */
export function sayRefusal(refusal: Refusal): Problem {
  switch (refusal.code) {
    case "invalid_scene":
      return explained(refusal);
    case "model_version_mismatch":
      return otherModel(refusal);
    case "outside_the_model": {
      const { refused, kind, field } = refusal;
      return outsideTheModel(refused, texts[kind.component].outside, field);
    }
  }
}

function explained({ kind, raw, found }: Refusal & { code: "invalid_scene" }): Problem {
  const { component, schema, rules }: Kept = kind;
  const checked = checkScene<never>({ check: checkOfScene(schema), rules }, raw, found);
  if ("scene" in checked) throw new Error(`Nothing is wrong with ${JSON.stringify(raw)}.`);
  return invalidScene(checked.findings, texts[component].rules);
}

/** Puts a refusal into words at once. */
export const said = (refusal: Refusal): Refused => ({ status: "problem", problem: sayRefusal(refusal) });
