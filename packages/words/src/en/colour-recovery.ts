import type { ColourRecoveryReasons, LightReasons } from "@sunfathom/planner";
import type { AnswerTexts } from "../answer-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { colourRecoveryReasons } from "./reasons/colour-recovery.js";
import { lightReasons } from "./reasons/light.js";

export const colourRecovery: AnswerTexts<ColourRecoveryReasons & LightReasons> = {
  reasons: { ...colourRecoveryReasons, ...lightReasons },
  causes,
  cautions,
};
