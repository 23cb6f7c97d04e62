import {
  type ColourRecoveryAnswer,
  colourRecoveryAnswerForm as form,
  type SceneExampleName,
} from "@sunfathom/contract";
import { colourRecovery as plan } from "@sunfathom/planner";
import type { TextUnits, Words } from "@sunfathom/words";
import { sayParts } from "../../say/say-parts.js";
import { lightScene } from "../../scene/light-scene.js";
import type { About } from "../about.js";
import { type Saying, taking } from "../calculation.js";
import { recoveryCost } from "../costs.js";

export const say = (planned: ReturnType<typeof plan>, texts: Words["colour-recovery"], units?: TextUnits) =>
  sayParts(planned, texts, units);

export const colourRecovery = taking(lightScene)({
  name: "colour-recovery",
  form,
  plan,
  say: say satisfies Saying<ReturnType<typeof say>, ColourRecoveryAnswer>,
  shownBy: ["pictures/red-in-post", "grades"],
});

export const about: About<SceneExampleName> = {
  summary: "What grading can still bring back",
  description:
    "Per depth, without and with the scene's filter: electrons, signal over noise and code values of each channel, how much of red is red light, and the depths at which it is no longer acceptable, gone, or not to be trusted.",
  examples: ["seen_from_the_boat", "outer_reef_morning", "reef_with_lamps"],
  brief: ["depths.depth_m", "red_acceptable_to_without_filter_depth_m.likely", "red_trusted_to_depth_m"],
  cost: recoveryCost,
};
