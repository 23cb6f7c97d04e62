import { BALANCE_EN } from "./balance.js";
import { CAMERA_EN } from "./camera.js";
import { CITATIONS_EN, COMMON_EN, MODEL_CITATIONS_EN } from "./common.js";
import { DIVE_EN } from "./dive.js";
import { EXPOSURE_EN } from "./exposure.js";
import { FILTER_EN } from "./filter.js";
import { GRADING_EN } from "./grading.js";
import { LAMPS_EN } from "./lamps.js";
import { LIGHT_EN } from "./light.js";
import { MISCONCEPTIONS_EN } from "./misconceptions.js";
import { MORE_EN } from "./more.js";
import { MOUNTING_EN } from "./mounting.js";
import { PRACTICE_EN } from "./practice.js";
import { SAFETY_EN } from "./safety.js";
import { showIn } from "./show.js";

/** Every text of questions, marks and packages, by subject and template. */
export const quizTexts = {
  show: showIn,
  common: COMMON_EN,
  citations: CITATIONS_EN,
  modelCitations: MODEL_CITATIONS_EN,
  misconceptions: MISCONCEPTIONS_EN,
  light: LIGHT_EN,
  filter: FILTER_EN,
  exposure: EXPOSURE_EN,
  balance: BALANCE_EN,
  lamps: LAMPS_EN,
  grading: GRADING_EN,
  mounting: MOUNTING_EN,
  safety: SAFETY_EN,
  camera: CAMERA_EN,
  more: MORE_EN,
  dive: DIVE_EN,
  practice: PRACTICE_EN,
};

/** Another language is another value of this type. */
export type QuizTexts = typeof quizTexts;
