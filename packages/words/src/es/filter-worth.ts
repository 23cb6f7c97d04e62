import type { LensFilterStep } from "@sunfathom/planner";
import { capital, errorFall, stops } from "./format.js";

export const worth = (p: Omit<LensFilterStep, "instead_of" | "outside">): string =>
  `${capital(errorFall(p.without_e, p.with_e))}${p.lit ? " a la luz de los focos de vídeo" : ""} y cuesta ${stops(p.loss_stops)} de luz.`;
