import {
  whiteBalanceAnswerForm as form,
  type SceneExampleName,
  type WhiteBalanceAnswer,
} from "@sunfathom/contract";
import { whiteBalance as plan } from "@sunfathom/planner";
import type { TextUnits, Words } from "@sunfathom/words";
import { say as sayCode } from "../../say/say.js";
import { sayParts } from "../../say/say-parts.js";
import { lightScene } from "../../scene/light-scene.js";
import type { About } from "../about.js";
import { type Saying, taking } from "../calculation.js";
import { balanceCost } from "../costs.js";

export const say = (planned: ReturnType<typeof plan>, texts: Words["white-balance"], units?: TextUnits) => ({
  ...sayParts(planned, texts, units),
  procedure: planned.procedure.map((step) => sayCode(step, texts.procedure, units)),
  procedure_steps: planned.procedure,
  card_notes: planned.card_notes.map((note) => ({ ...note, text: sayCode(note, texts.notes, units) })),
});

export const whiteBalance = taking(lightScene)({
  name: "white-balance",
  form,
  plan,
  say: say satisfies Saying<ReturnType<typeof say>, WhiteBalanceAnswer>,
  shownBy: ["pictures/chart-under-water"],
});

export const about: About<SceneExampleName> = {
  summary: "How to set a white balance, and where to set it again",
  description:
    "Per depth: the channel gains that make a grey card neutral and whether the camera reaches them; the depths at which to set it again on the way down and up; for video lights, the colour cast that their own Kelvin preset would leave.",
  examples: ["seen_from_the_boat", "outer_reef_morning", "night_wreck"],
  brief: ["method", "balance_depths_descending_m"],
  cost: balanceCost,
};
