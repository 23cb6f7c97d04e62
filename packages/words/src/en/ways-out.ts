import type { WaysOut } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { shown } from "./format.js";

/** Ways out where lamps and daylight fight. */
export const waysOut: Texts<WaysOut, string> = {
  lamps_off: (p) =>
    `Switch the lamps off and leave them on the rig; balance to daylight. Costs ${shown(p.cost_stops, 1)} stops on the subject.`,
  lamp_filter: (p) =>
    `Put a filter on each lamp that makes its light match daylight here: of ${shown(p.red * 100)} % red, ${shown(p.green * 100)} % green and ${shown(p.blue * 100)} % blue; the nearest of the plain kinds is ${p.kind} of density ${shown(p.density, 2)}${p.is_seen ? ", which still leaves a visible split" : ""}. Balance to daylight.`,
  balance_to_lamps: () =>
    "Balance to a card lit by the lamps: the subject looks right and everything that only daylight reaches takes on the colour of the water.",
  come_closer: (p) =>
    `Bring the lamps to ${shown(p.distance_m, 2)} m from the subject and balance to them: they then outshine daylight.`,
};
