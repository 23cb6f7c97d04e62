import type { LensFilterStep } from "@sunfathom/planner";
import { errorFall, stops } from "./format.js";

export const worth = (p: Omit<LensFilterStep, "instead_of" | "outside">): string =>
  `Il ${errorFall(p.without_e, p.with_e)}${p.lit ? " à la lumière des phares vidéo" : ""} et coûte ${stops(p.loss_stops)} de lumière.`;
