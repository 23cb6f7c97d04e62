import {
  type ColourRecoveryAnswer,
  colourRecoveryAnswerForm as form,
  type SceneExampleName,
} from "@sunfathom/contract";
import { colourRecovery as plan } from "@sunfathom/planner";
import { lightScene } from "../../scene/light-scene.js";
import type { About } from "../about.js";
import { type Plan, taking } from "../calculation.js";
import { recoveryCost } from "../costs.js";

export const colourRecovery = taking(lightScene)({
  name: "colour-recovery",
  form,
  plan: plan satisfies Plan<ReturnType<typeof plan>, ColourRecoveryAnswer>,
});

export const about: About<SceneExampleName> = {
  summary: "What grading can still bring back",
  description:
    "Per depth, without and with the scene's filter: electrons, signal over noise and code values of each channel, how much of red is red light, and the depths at which it is no longer acceptable, gone, or not to be trusted.",
  examples: ["outer_reef_morning", "reef_with_lamps"],
  cost: recoveryCost,
};
