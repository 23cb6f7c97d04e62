import { type FilterMountingAnswer, filterMountingAnswerForm as form } from "@sunfathom/contract";
import { type FilterMountingScene, filterMounting as plan } from "@sunfathom/planner";
import { mountingScene } from "../../scene/mounting-scene.js";
import { type Plan, taking } from "../calculation.js";

export const filterMounting = taking(mountingScene)({
  name: "filter-mounting",
  path: "/v1/filter-mounting",
  form,
  plan: plan satisfies Plan<ReturnType<typeof plan>, FilterMountingAnswer, FilterMountingScene>,
});
