import type { LightReasons, WhiteBalanceReasons } from "@sunfathom/planner";
import type { AnswerTexts } from "../answer-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { lightReasons } from "./reasons/light.js";
import { whiteBalanceReasons } from "./reasons/white-balance.js";

export const whiteBalance: AnswerTexts<WhiteBalanceReasons & LightReasons> = {
  reasons: { ...whiteBalanceReasons, ...lightReasons },
  causes,
  cautions,
};
