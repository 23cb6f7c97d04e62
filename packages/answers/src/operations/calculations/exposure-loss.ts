import { type ExposureLossAnswer, exposureLossAnswerForm as form } from "@sunfathom/contract";
import { exposureLoss as plan } from "@sunfathom/planner";
import { lightScene } from "../../scene/light-scene.js";
import { type Plan, taking } from "../calculation.js";

export const exposureLoss = taking(lightScene)({
  name: "exposure-loss",
  path: "/v1/exposure-loss",
  form,
  plan: plan satisfies Plan<ReturnType<typeof plan>, ExposureLossAnswer>,
});
