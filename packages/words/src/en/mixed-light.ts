import type { LightReasons, MixedLightReasons } from "@sunfathom/planner";
import type { AnswerTexts } from "../answer-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { lightReasons } from "./reasons/light.js";
import { mixedLightReasons } from "./reasons/mixed-light.js";

export const mixedLight: AnswerTexts<MixedLightReasons & LightReasons> = {
  reasons: { ...mixedLightReasons, ...lightReasons },
  causes,
  cautions,
};
