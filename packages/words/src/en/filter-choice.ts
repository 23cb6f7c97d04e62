import type { FilterChoiceReasons, LightReasons } from "@sunfathom/planner";
import type { AnswerTexts } from "../answer-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { filterChoiceReasons } from "./reasons/filter-choice.js";
import { lightReasons } from "./reasons/light.js";

export const filterChoice: AnswerTexts<FilterChoiceReasons & LightReasons> = {
  reasons: { ...filterChoiceReasons, ...lightReasons },
  causes,
  cautions,
};
