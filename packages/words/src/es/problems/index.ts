import type { ProblemTexts } from "../../problem-texts.js";
import { quizRefusals } from "../quiz/refusals.js";
import { repeatedName } from "./details.js";
import { fieldsTexts, queryDetails, queryTexts } from "./query.js";
import { sceneProblems } from "./scene-problems.js";
import { serviceDetails } from "./service.js";
import { problemTitles } from "./titles.js";

export { sceneProblems } from "./scene-problems.js";

/** All that a service refuses, in Spanish. */
export const problems: ProblemTexts = {
  ...sceneProblems,
  titles: problemTitles(),
  repeatedName,
  query: queryTexts,
  fields: fieldsTexts,
  queryDetails,
  service: serviceDetails,
  quiz: quizRefusals,
};
