import {
  type DiveAdviceAnswer,
  diveAdviceAnswerForm as form,
  type SceneExampleName,
} from "@sunfathom/contract";
import { diveAdvice as plan } from "@sunfathom/planner";
import { lightScene } from "../../scene/light-scene.js";
import type { About } from "../about.js";
import { type Plan, taking } from "../calculation.js";
import { about as recovery } from "./colour-recovery.js";
import { about as exposure } from "./exposure-loss.js";
import { about as choice } from "./filter-choice.js";
import { about as mixed } from "./mixed-light.js";
import { about as balance } from "./white-balance.js";

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
  cost: (size) =>
    choice.cost(size) +
    2 * mixed.cost(size) +
    size.legs * (balance.cost(size) + exposure.cost(size)) +
    recovery.cost(size),
};
