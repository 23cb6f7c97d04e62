/** Answers of the planner in English, each with the step that puts them into words. */
import { say as sayAttenuation } from "../../packages/answers/src/operations/calculations/attenuation.js";
import { say as sayExposure } from "../../packages/answers/src/operations/calculations/exposure-loss.js";
import { say as sayChoice } from "../../packages/answers/src/operations/calculations/filter-choice.js";
import { say as sayMixed } from "../../packages/answers/src/operations/calculations/mixed-light.js";
import { sayPlan as sayAdvice } from "../../packages/answers/src/operations/say-plan.js";
import {
  attenuation,
  diveAdvice,
  exposureLoss,
  filterChoice,
  mixedLight,
  type Scene,
} from "../../packages/planner/src/index.js";
import { en } from "../../packages/words/src/en/index.js";

export const saidAttenuation = (scene: Scene) => sayAttenuation(attenuation(scene), en.attenuation);
export const saidAdvice = (scene: Scene) => sayAdvice(diveAdvice(scene), en["dive-advice"]);
export const saidExposure = (scene: Scene) => sayExposure(exposureLoss(scene), en["exposure-loss"]);
export const saidChoice = (scene: Scene) => sayChoice(filterChoice(scene), en["filter-choice"]);
export const saidMixed = (scene: Scene) => sayMixed(mixedLight(scene), en["mixed-light"]);
