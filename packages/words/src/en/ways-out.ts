import type { WaysOut } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { densityOf, distance, shown, stops } from "./format.js";

/** Ways out where video lights and daylight fight. */
export const waysOut: Texts<WaysOut, string> = {
  lamps_off: (p) =>
    `Switch the video lights off and leave them on the rig; set the white balance in daylight. That costs ${stops(p.cost_stops)} on the subject.`,
  lamp_filter: (p) =>
    `Put a filter on each video light to match daylight here: one that lets ${shown(p.red * 100)} % of red, ${shown(p.green * 100)} % of green and ${shown(p.blue * 100)} % of blue through. The nearest plain one is ${p.kind}, density ${densityOf(p.density)}${p.is_seen ? ", which still leaves a visible colour cast" : ""}. Set the white balance in daylight.`,
  balance_to_lamps: () =>
    "Set the white balance on a card lit by the video lights: the colours of the subject are then right, and everything that only daylight reaches takes on the colour of the water.",
  come_closer: (p, u) =>
    `Bring the video lights to ${distance(p.distance_m, u)} from the subject, under control, and set the white balance on a card in their light: from there they outshine daylight.`,
};
