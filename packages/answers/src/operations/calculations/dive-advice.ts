import {
  type DiveAdviceAnswer,
  diveAdviceAnswerForm as form,
  type SceneExampleName,
} from "@sunfathom/contract";
import { diveAdvice as plan } from "@sunfathom/planner";
import { lightScene } from "../../scene/light-scene.js";
import type { About } from "../about.js";
import { type Plan, taking } from "../calculation.js";
import { planCost } from "../costs.js";

export const diveAdvice = taking(lightScene)({
  name: "dive-advice",
  form,
  plan: plan satisfies Plan<ReturnType<typeof plan>, DiveAdviceAnswer>,
});

export const about: About<SceneExampleName> = {
  summary: "The whole job for one dive",
  description:
    "Filter, exposure, white balance and lamps as one plan in the order in which things are done, each line with its number and its reason, and what to take from the shelf when `kit` is given.",
  examples: ["outer_reef_morning", "harbour_wall_afternoon", "night_wreck", "reef_with_lamps"],
  cost: planCost,
};
