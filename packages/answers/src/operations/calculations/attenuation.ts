import {
  type AttenuationAnswer,
  attenuationAnswerForm as form,
  type SceneExampleName,
} from "@sunfathom/contract";
import { attenuation as plan } from "@sunfathom/planner";
import { lightScene } from "../../scene/light-scene.js";
import type { About } from "../about.js";
import { type Plan, taking } from "../calculation.js";

export const attenuation = taking(lightScene)({
  name: "attenuation",
  form,
  plan: plan satisfies Plan<ReturnType<typeof plan>, AttenuationAnswer>,
});

export const about: About<SceneExampleName> = {
  summary: "How the water takes the light",
  description:
    "Per depth: the spectrum that is left, the loss of red, green and blue, of light as the eye weighs it and of photosynthetically active radiation, the colour of the light, and how far red reaches.",
  examples: ["outer_reef_morning", "harbour_wall_afternoon"],
  cost: () => 0,
};
