import {
  type DiveAdviceAnswer,
  diveAdviceAnswerForm as form,
  type SceneExampleName,
} from "@sunfathom/contract";
import { diveAdvice as plan } from "@sunfathom/planner";
import type { TextUnits, Words } from "@sunfathom/words";
import { figuresOf } from "../../say/figures-of.js";
import { say as sayCode } from "../../say/say.js";
import { sayParts } from "../../say/say-parts.js";
import { lightScene } from "../../scene/light-scene.js";
import type { About } from "../about.js";
import { type Saying, taking } from "../calculation.js";
import { planCost } from "../costs.js";

export const say = (planned: ReturnType<typeof plan>, texts: Words["dive-advice"], units?: TextUnits) => ({
  ...sayParts(planned, texts, units),
  summary: planned.summary.map((part) => sayCode(part, texts.summary, units)).join(" "),
  summary_parts: planned.summary,
  close_calls: planned.close_calls.map((call) => ({ ...call, text: sayCode(call, texts.summary, units) })),
  steps: planned.steps.map((step) => ({
    ...step,
    ...sayCode(step, texts.steps, units),
    figures: figuresOf(step.parameters),
  })),
  take: planned.take.map((item) => ({ ...item, ...sayCode(item, texts.take, units) })),
});

export const diveAdvice = taking(lightScene)({
  name: "dive-advice",
  form,
  plan,
  say: say satisfies Saying<ReturnType<typeof say>, DiveAdviceAnswer>,
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
