import { lightWindowsReady } from "@sunfathom/answers";
import { lightWindowsExamples, mostListedWindows, mostWindowDays } from "@sunfathom/contract";
import { costOfCalculation, costOfForm } from "../../compute/cost.js";
import { tripOperation } from "./trip-operation.js";

/** Where the sun stands at one moment. */
const moment = 1 / 40;
/** The model under one sun and sky: a few filters at three depths, and what all of that stands in. */
const state = 6;
/** Every filter there is under one sun, at three depths: so much and, of each filter, so much. */
const search = 25;
const searched = 0.3;
/** Filters that are tried where no kit is given. */
const filtersOfGrid = 25;
/** What is not known, one cause after another, in the best window. */
const spread = 60;
/** Waters that are looked for anew meanwhile, where water is. */
const waters = 24;

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
    // Its filters are brought into their one form once, which is paid for where the body is read.
    const own = costOfCalculation("attenuation", scene) - costOfForm(scene);
    const { kit }: { kit?: readonly { item: string }[] } = scene;
    const filters =
      kit === undefined ? filtersOfGrid : kit.filter(({ item }) => item === "lens_filter").length;
    const found = searches * (own + search + filters * searched);
    return Math.ceil(spread + waters * own + found + states * (own + state) + moments * moment);
  },
});
