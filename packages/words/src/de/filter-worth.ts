import type { LensFilterStep } from "@sunfathom/planner";
import { errorFall, stops } from "./format.js";

export const worth = (p: Omit<LensFilterStep, "instead_of" | "outside">): string =>
  `Er ${errorFall(p.without_e, p.with_e)}${p.lit ? " im Licht der Videolampen" : ""} und kostet ${stops(p.loss_stops)} Licht.`;
