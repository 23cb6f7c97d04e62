import type { ExposureLossReasons, LightReasons } from "@sunfathom/planner";
import type { AnswerTexts } from "../answer-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { exposureLossReasons } from "./reasons/exposure-loss.js";
import { lightReasons } from "./reasons/light.js";

export const exposureLoss: AnswerTexts<ExposureLossReasons & LightReasons> = {
  reasons: { ...exposureLossReasons, ...lightReasons },
  causes,
  cautions,
};
