import { mixedLightAnswerForm as form, type MixedLightAnswer } from "@sunfathom/contract";
import { mixedLight as plan } from "@sunfathom/planner";
import { lightScene } from "../../scene/light-scene.js";
import { type Plan, taking } from "../calculation.js";

export const mixedLight = taking(lightScene)({
  name: "mixed-light",
  path: "/v1/mixed-light",
  form,
  plan: plan satisfies Plan<ReturnType<typeof plan>, MixedLightAnswer>,
});
