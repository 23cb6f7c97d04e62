import type { FilterChoiceTexts } from "../calculation-texts.js";
import { causes } from "./causes.js";
import { cautions } from "./cautions.js";
import { filterChoiceReasons } from "./reasons/filter-choice.js";
import { lightReasons } from "./reasons/light.js";

export const filterChoice: FilterChoiceTexts = {
  reasons: { ...filterChoiceReasons, ...lightReasons },
  causes,
  cautions,
};
