import type { LensFilterStep } from "@sunfathom/planner";
import type { TextUnits } from "../problems/texts.js";
import { depth, errorFall, stops, strength } from "./format.js";

export const worth = (p: Omit<LensFilterStep, "instead_of" | "outside">, u?: TextUnits): string =>
  `It ${errorFall(p.without_e, p.with_e)}${p.lit ? " in the light of the video lights" : ""} and costs ${stops(p.loss_stops)} of light.${p.below ? ` Below ${depth(p.below.from_m, u)} the colour error is ${strength(p.below.error)}.` : ""}`;
