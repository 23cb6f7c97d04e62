import type { PlanReasons } from "@sunfathom/planner";
import type { AnswerTexts } from "../answer-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { exposureLossReasons } from "./reasons/exposure-loss.js";
import { filterChoiceReasons } from "./reasons/filter-choice.js";
import { lightReasons } from "./reasons/light.js";
import { mixedLightReasons } from "./reasons/mixed-light.js";
import { whiteBalanceReasons } from "./reasons/white-balance.js";

export const diveAdvice: AnswerTexts<PlanReasons> = {
  reasons: {
    ...filterChoiceReasons,
    ...mixedLightReasons,
    ...whiteBalanceReasons,
    ...exposureLossReasons,
    ...lightReasons,
  },
  causes,
  cautions,
};
