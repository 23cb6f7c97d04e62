import type { LensFilterStep } from "@sunfathom/planner";
import type { TextUnits } from "../problems/texts.js";
import { depth, errorFall, stops, strength } from "./format.js";

export const worth = (p: Omit<LensFilterStep, "instead_of" | "outside">, u?: TextUnits): string =>
  `Il ${errorFall(p.without_e, p.with_e)}${p.lit ? " à la lumière des phares vidéo" : ""} et coûte ${stops(p.loss_stops)} de lumière.${p.below ? ` Au-delà de ${depth(p.below.from_m, u)}, l’erreur de couleur est ${strength(p.below.error)}.` : ""}`;
