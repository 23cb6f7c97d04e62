import {
  type AttenuationAnswer,
  attenuationAnswerForm as form,
  type SceneExampleName,
} from "@sunfathom/contract";
import { attenuation as plan } from "@sunfathom/planner";
import type { TextUnits, Words } from "@sunfathom/words";
import { sayParts } from "../../say/say-parts.js";
import { lightScene } from "../../scene/light-scene.js";
import type { About } from "../about.js";
import { type Saying, taking } from "../calculation.js";

export const say = (planned: ReturnType<typeof plan>, texts: Words["attenuation"], units?: TextUnits) =>
  sayParts(planned, texts, units);

export const attenuation = taking(lightScene)({
  name: "attenuation",
  form,
  plan,
  say: say satisfies Saying<ReturnType<typeof say>, AttenuationAnswer>,
  shownBy: ["pictures/light-with-depth"],
});

export const about: About<SceneExampleName> = {
  summary: "What the water leaves of the light",
  description:
    "Per depth: the spectrum that is left, the loss of red, green and blue, of light as the eye weighs it and of photosynthetically active radiation, the colour of the light, and how deep red reaches.",
  examples: ["seen_from_the_boat", "outer_reef_morning", "harbour_wall_afternoon"],
  brief: ["red_to_tenth_depth_m", "red_to_hundredth_depth_m"],
  cost: () => 0,
};
