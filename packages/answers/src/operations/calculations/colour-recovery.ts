import { type ColourRecoveryAnswer, colourRecoveryAnswerForm as form } from "@sunfathom/contract";
import { colourRecovery as plan } from "@sunfathom/planner";
import { lightScene } from "../../scene/light-scene.js";
import { type Plan, taking } from "../calculation.js";

export const colourRecovery = taking(lightScene)({
  name: "colour-recovery",
  path: "/v1/colour-recovery",
  form,
  plan: plan satisfies Plan<ReturnType<typeof plan>, ColourRecoveryAnswer>,
});
