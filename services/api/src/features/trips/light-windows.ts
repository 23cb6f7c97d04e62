import { lightWindowsReady } from "@sunfathom/answers";
import { lightWindowsExamples, mostListedWindows, mostWindowDays } from "@sunfathom/contract";
import { costOfCalculation } from "../../compute/cost.js";
import { tripOperation } from "./trip-operation.js";

/** Where the sun stands at one moment. */
const moment = 1 / 40;
/** The model under one sun and sky: a few filters at three depths, and what all of that stands in. */
const state = 12;
/** What is not known, one cause after another, in the best window. */
const spread = 120;

/** When the light of a site is best. */
export const lightWindows = tripOperation({
  name: "light-windows",
  operationId: "computeLightWindows",
  summary: "When the light of a site is best",
  description: `For one site and up to ${mostWindowDays} days: the best windows of each day within the opening hours, up to ${mostListedWindows}, each with its light and the red that is left at the middle of the depths, the filter, the exposure and why. Cloud comes from your forecast, by the hour or by the day; without one the sky is taken for clear, and the answer says so. Windows are ranked by colour error / 2 ^ (weight x light), with a weight for each \`aim\`: none that is listed has both a larger colour error and less light than one that is not. The guide to trips says the weights.`,
  request: "LightWindowsRequest",
  answer: "LightWindowsAnswer",
  examples: lightWindowsExamples,
  forms: ["application/json"],
  prepare: lightWindowsReady,
  cost: ({ scene, size: { states, searches, moments } }) => {
    const own = costOfCalculation("attenuation", scene);
    const search = costOfCalculation("filter-choice", scene);
    return Math.ceil(spread + searches * search + states * (own + state) + moments * moment);
  },
});
