import type { LensFilterStep } from "@sunfathom/planner";
import { errorFall, stops } from "./format.js";

export const worth = (p: Omit<LensFilterStep, "instead_of" | "outside">): string =>
  `It ${errorFall(p.without_e, p.with_e)}${p.lit ? " in the light of the video lights" : ""} and costs ${stops(p.loss_stops)} of light.`;
