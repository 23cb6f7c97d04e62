import {
  type ExposureLossAnswer,
  exposureLossAnswerForm as form,
  type SceneExampleName,
} from "@sunfathom/contract";
import { exposureLoss as plan } from "@sunfathom/planner";
import type { TextUnits, Words } from "@sunfathom/words";
import { say as sayCode } from "../../say/say.js";
import { sayParts } from "../../say/say-parts.js";
import { lightScene } from "../../scene/light-scene.js";
import type { About } from "../about.js";
import { type Saying, taking } from "../calculation.js";
import { exposureCost } from "../costs.js";

export const say = (planned: ReturnType<typeof plan>, texts: Words["exposure-loss"], units?: TextUnits) => ({
  ...sayParts(planned, texts, units),
  depths: planned.depths.map((depth) => ({
    ...depth,
    ways_to_pay: depth.ways_to_pay.map((way) => ({ ...way, text: sayCode(way, texts.ways, units) })),
  })),
});

export const exposureLoss = taking(lightScene)({
  name: "exposure-loss",
  form,
  plan,
  say: say satisfies Saying<ReturnType<typeof say>, ExposureLossAnswer>,
  shownBy: ["pictures/exposure-budget"],
});

export const about: About<SceneExampleName> = {
  summary: "Where light is lost, and what makes up for it",
  description:
    "Stops lost to the surface, the water, the distance and the filters; the ISO speed, aperture and exposure time that make up for them; how much is missing or too much where the camera cannot do it.",
  examples: ["seen_from_the_boat", "outer_reef_morning", "reef_with_lamps"],
  brief: ["depths.depth_m", "depths.verdict", "depths.iso", "depths.f_number"],
  cost: exposureCost,
};
