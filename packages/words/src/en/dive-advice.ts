import type { DiveAdviceTexts } from "../calculation-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { circumstanceReasons } from "./reasons/circumstances.js";
import { filterCircumstances } from "./reasons/filter-circumstances.js";
import { filterMainReasons } from "./reasons/filter-main.js";
import { leftAshoreReasons } from "./reasons/left-ashore.js";
import { lightReasons } from "./reasons/light.js";
import { whiteBalanceReasons } from "./reasons/white-balance.js";
import { steps } from "./steps.js";
import { summary } from "./summary.js";
import { take } from "./take.js";

export const diveAdvice: DiveAdviceTexts = {
  reasons: {
    ...filterMainReasons,
    ...whiteBalanceReasons,
    ...lightReasons,
    ...leftAshoreReasons,
    ...circumstanceReasons,
    ...filterCircumstances,
  },
  causes,
  cautions,
  summary,
  steps,
  take,
};
