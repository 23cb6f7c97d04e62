import {
  type FilterChoiceAnswer,
  filterChoiceAnswerForm as form,
  type SceneExampleName,
} from "@sunfathom/contract";
import { filterChoice as plan } from "@sunfathom/planner";
import type { TextUnits, Words } from "@sunfathom/words";
import { sayParts } from "../../say/say-parts.js";
import { lightScene } from "../../scene/light-scene.js";
import type { About } from "../about.js";
import { type Saying, taking } from "../calculation.js";
import { choiceCost, rankingCost } from "../costs.js";

export const say = (planned: ReturnType<typeof plan>, texts: Words["filter-choice"], units?: TextUnits) =>
  sayParts(planned, texts, units);

export const filterChoice = taking(lightScene)({
  name: "filter-choice",
  form,
  plan,
  say: say satisfies Saying<ReturnType<typeof say>, FilterChoiceAnswer>,
  shownBy: [
    "pictures/chart-under-water",
    "pictures/filter-map",
    "pictures/colour-strip",
    "pictures/red-in-post",
  ],
});

export const about: About<SceneExampleName> = {
  summary: "Which filter to mount on the lens",
  description:
    "None, red, magenta or another kind, its density, the depths that it serves, and by how much the runner-up loses; with a `kit` everything in it, ranked. Judged by the colours of a 24-patch chart after the camera has done what it can.",
  examples: ["seen_from_the_boat", "outer_reef_morning", "harbour_wall_afternoon", "night_wreck"],
  brief: ["filter_kind", "filter_density", "filter_id", "verdict", "filter_loss_stops.likely"],
  cost: (size) => choiceCost(size) + rankingCost(size),
};
