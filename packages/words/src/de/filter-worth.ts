import type { LensFilterStep } from "@sunfathom/planner";
import type { TextUnits } from "../problems/texts.js";
import { depth, errorFall, stops, strength } from "./format.js";

export const worth = (p: Omit<LensFilterStep, "instead_of" | "outside">, u?: TextUnits): string =>
  `Er ${errorFall(p.without_e, p.with_e)}${p.lit ? " im Licht der Videolampen" : ""} und kostet ${stops(p.loss_stops)} Licht.${p.below ? ` Unterhalb von ${depth(p.below.from_m, u)} ist der Farbfehler ${strength(p.below.error)}.` : ""}`;
