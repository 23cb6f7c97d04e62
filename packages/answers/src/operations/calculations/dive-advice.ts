import {
  type DiveAdviceAnswer,
  diveAdviceAnswerForm as form,
  type SceneExampleName,
} from "@sunfathom/contract";
import { diveAdvice as plan } from "@sunfathom/planner";
import { lightScene } from "../../scene/light-scene.js";
import type { About } from "../about.js";
import { type Saying, taking } from "../calculation.js";
import { planCost } from "../costs.js";
import { sayPlan as say } from "../say-plan.js";
import type { MountedTexts, Mounts } from "../wider/dive-advice.js";

const shownBy = [
  "pictures/chart-under-water",
  "pictures/light-with-depth",
  "pictures/red-in-post",
  "pictures/colour-strip",
  "pictures/filter-map",
  "pictures/mixed-light-map",
  "pictures/exposure-budget",
  "slates",
  "grades",
] as const;

export const diveAdvice = taking(lightScene)({
  name: "dive-advice",
  form,
  plan,
  say: say satisfies Saying<ReturnType<typeof say>, DiveAdviceAnswer>,
  shownBy,
});

/** The same with plans for scenes that say what their filters are mounted on, by who makes these: a page loads that where a scene says so. */
export const diveAdviceWith = ({ mounted, sayMounted }: Mounts) =>
  taking(lightScene)({
    name: "dive-advice",
    form,
    plan: (scene): ReturnType<typeof mounted> =>
      scene.port_kind === undefined ? plan(scene) : mounted(scene, plan),
    say: (planned: ReturnType<typeof mounted>, texts: MountedTexts, units) =>
      sayMounted(planned, { texts, units }, say),
    shownBy,
  });

export const about: About<SceneExampleName> = {
  summary: "The whole job for one dive",
  description:
    "Filter, exposure, white balance and video lights as one plan in the order in which you do things, each line with its number and its reason, and with `kit` what to take from the shelf.",
  examples: [
    "seen_from_the_boat",
    "outer_reef_morning",
    "harbour_wall_afternoon",
    "night_wreck",
    "reef_with_lamps",
  ],
  brief: ["filter_kind", "filter_density", "filter_id", "lamp_plan", "balance_depths_descending_m"],
  cost: planCost,
};
