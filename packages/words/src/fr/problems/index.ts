import type { ProblemTexts } from "../../problem-texts.js";
import { quizRefusals } from "../quiz/refusals.js";
import { batchRules } from "./batch-rules.js";
import { repeatedName } from "./details.js";
import { fieldsTexts, queryDetails, queryTexts } from "./query.js";
import { sceneProblems } from "./scene-problems.js";
import { serviceDetails } from "./service.js";
import { problemTitles } from "./titles.js";
import { tripRules } from "./trip-rules.js";

export { batchRules } from "./batch-rules.js";
export { sceneProblems } from "./scene-problems.js";
export { problemTitles } from "./titles.js";

/** Tout ce qu’un service refuse, en français. */
export const problems: ProblemTexts = {
  ...sceneProblems,
  titles: problemTitles(),
  repeatedName,
  query: queryTexts,
  fields: fieldsTexts,
  queryDetails,
  service: serviceDetails,
  quiz: quizRefusals,
  batch: batchRules,
  trip: tripRules,
};
