import type { LensFilterStep } from "@sunfathom/planner";
import type { TextUnits } from "../problems/texts.js";
import { capital, depth, errorFall, stops, strength } from "./format.js";

export const worth = (p: Omit<LensFilterStep, "instead_of" | "outside">, u?: TextUnits): string =>
  `${capital(errorFall(p.without_e, p.with_e))}${p.lit ? " a la luz de los focos de vídeo" : ""} y cuesta ${stops(p.loss_stops)} de luz.${p.below ? ` Por debajo de ${depth(p.below.from_m, u)}, el error de color es ${strength(p.below.error)}.` : ""}`;
