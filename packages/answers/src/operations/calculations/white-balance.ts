import { whiteBalanceAnswerForm as form, type WhiteBalanceAnswer } from "@sunfathom/contract";
import { whiteBalance as plan } from "@sunfathom/planner";
import { lightScene } from "../../scene/light-scene.js";
import { type Plan, taking } from "../calculation.js";

export const whiteBalance = taking(lightScene)({
  name: "white-balance",
  path: "/v1/white-balance",
  form,
  plan: plan satisfies Plan<ReturnType<typeof plan>, WhiteBalanceAnswer>,
});
