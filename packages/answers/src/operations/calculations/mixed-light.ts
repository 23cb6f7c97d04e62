import {
  mixedLightAnswerForm as form,
  type MixedLightAnswer,
  type SceneExampleName,
} from "@sunfathom/contract";
import { mixedLight as plan } from "@sunfathom/planner";
import { lightScene } from "../../scene/light-scene.js";
import type { About } from "../about.js";
import { type Plan, taking } from "../calculation.js";
import { mixedCost } from "../costs.js";

export const mixedLight = taking(lightScene)({
  name: "mixed-light",
  form,
  plan: plan satisfies Plan<ReturnType<typeof plan>, MixedLightAnswer>,
});

export const about: About<SceneExampleName> = {
  summary: "Lamps against daylight",
  description:
    "Lamp light over daylight per channel and depth, how far the two split the picture's colour after balancing, and the way out: lamps off, a filter on the lamps, balancing to the lamps, or coming closer.",
  examples: ["reef_with_lamps", "night_wreck"],
  cost: mixedCost,
};
