import type { SceneProblemTexts } from "../../problem-texts.js";
import { checkTexts } from "./check.js";
import { problemDetails } from "./details.js";
import { mountingRuleTexts } from "./mounting-rules.js";
import { outsideLight } from "./outside-light.js";
import { outsideMounting } from "./outside-mounting.js";
import { sceneRuleTexts } from "./scene-rules.js";
import { sceneProblemTitles } from "./titles.js";

/** Why a scene has no answer, in Spanish. */
export const sceneProblems: SceneProblemTexts = {
  titles: sceneProblemTitles,
  details: problemDetails,
  checks: checkTexts,
  lightRules: sceneRuleTexts,
  mountingRules: mountingRuleTexts,
  outsideLight,
  outsideMounting,
};
