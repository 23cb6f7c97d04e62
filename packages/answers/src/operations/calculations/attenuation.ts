import { type AttenuationAnswer, attenuationAnswerForm as form } from "@sunfathom/contract";
import { attenuation as plan } from "@sunfathom/planner";
import { lightScene } from "../../scene/light-scene.js";
import { type Plan, taking } from "../calculation.js";

export const attenuation = taking(lightScene)({
  name: "attenuation",
  path: "/v1/attenuation",
  form,
  plan: plan satisfies Plan<ReturnType<typeof plan>, AttenuationAnswer>,
});
