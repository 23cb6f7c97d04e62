import { type FilterChoiceAnswer, filterChoiceAnswerForm as form } from "@sunfathom/contract";
import { filterChoice as plan } from "@sunfathom/planner";
import { lightScene } from "../../scene/light-scene.js";
import { type Plan, taking } from "../calculation.js";

export const filterChoice = taking(lightScene)({
  name: "filter-choice",
  path: "/v1/filter-choice",
  form,
  plan: plan satisfies Plan<ReturnType<typeof plan>, FilterChoiceAnswer>,
});
