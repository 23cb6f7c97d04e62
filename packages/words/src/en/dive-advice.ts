import type { LightReasons } from "@sunfathom/planner";
import type { AnswerTexts } from "../answer-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { lightReasons } from "./reasons/light.js";

export const diveAdvice: AnswerTexts<LightReasons> = { reasons: lightReasons, causes, cautions };
