import {
  mixedLightAnswerForm as form,
  type MixedLightAnswer,
  type SceneExampleName,
} from "@sunfathom/contract";
import { mixedLight as plan } from "@sunfathom/planner";
import type { TextUnits, Words } from "@sunfathom/words";
import { say as sayCode } from "../../say/say.js";
import { sayParts } from "../../say/say-parts.js";
import { lightScene } from "../../scene/light-scene.js";
import type { About } from "../about.js";
import { type Saying, taking } from "../calculation.js";
import { mixedCost } from "../costs.js";

export const say = (planned: ReturnType<typeof plan>, texts: Words["mixed-light"], units?: TextUnits) => ({
  ...sayParts(planned, texts, units),
  depths: planned.depths.map((depth) => ({
    ...depth,
    ways_out: depth.ways_out.map((way) => ({ ...way, text: sayCode(way, texts.ways, units) })),
  })),
});

export const mixedLight = taking(lightScene)({
  name: "mixed-light",
  form,
  plan,
  say: say satisfies Saying<ReturnType<typeof say>, MixedLightAnswer>,
  shownBy: ["pictures/mixed-light-map"],
});

export const about: About<SceneExampleName> = {
  summary: "Video lights against daylight",
  description:
    "Video lights over daylight per channel and depth, the colour cast that one white balance leaves between the two, and the way out: video lights off, filters on them, the white balance set to them, or coming closer.",
  examples: ["lights_on_the_boat", "reef_with_lamps", "night_wreck"],
  brief: ["balance_to"],
  cost: mixedCost,
};
