import type { DiveAdviceTexts } from "../calculation-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { exposureLossReasons } from "./reasons/exposure-loss.js";
import { filterChoiceReasons } from "./reasons/filter-choice.js";
import { lightReasons } from "./reasons/light.js";
import { mixedLightReasons } from "./reasons/mixed-light.js";
import { whiteBalanceReasons } from "./reasons/white-balance.js";
import { steps } from "./steps.js";
import { summary } from "./summary.js";
import { take } from "./take.js";

export const diveAdvice: DiveAdviceTexts = {
  reasons: {
    ...filterChoiceReasons,
    ...mixedLightReasons,
    ...whiteBalanceReasons,
    ...exposureLossReasons,
    ...lightReasons,
  },
  causes,
  cautions,
  summary,
  steps,
  take,
};
