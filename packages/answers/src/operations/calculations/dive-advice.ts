import { type DiveAdviceAnswer, diveAdviceAnswerForm as form } from "@sunfathom/contract";
import { diveAdvice as plan } from "@sunfathom/planner";
import { lightScene } from "../../scene/light-scene.js";
import { type Plan, taking } from "../calculation.js";

export const diveAdvice = taking(lightScene)({
  name: "dive-advice",
  path: "/v1/dive-advice",
  form,
  plan: plan satisfies Plan<ReturnType<typeof plan>, DiveAdviceAnswer>,
});
