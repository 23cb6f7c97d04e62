import type { WaysOut } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { distance, shown, stops } from "./format.js";

/** Ways out where video lights and daylight fight. */
export const waysOut: Texts<WaysOut, string> = {
  lamps_off: (p) =>
    `Switch the video lights off and leave them on the rig; set the white balance in daylight. That costs ${stops(p.cost_stops)} on the subject.`,
  lamp_filter: (p) =>
    `Put a ${p.kind} filter of about density ${shown(p.density, 1)} on each video light before the dive: it matches them to daylight here${p.is_seen ? ", but still leaves a visible colour cast" : ""}. Set the white balance in daylight.`,
  balance_to_lamps: () =>
    "Set the white balance on a card lit by the video lights: the colours of the subject are then right, and everything that only daylight reaches takes on the colour of the water.",
  balance_to_both: () =>
    "Leave the video lights on and set the white balance on a card where the subject is, in both lights: the colours of the subject are then right, and what the video lights do not reach takes on the colour of the water.",
  come_closer: (p, u) =>
    `Bring the video lights to ${distance(p.distance_m, u)} from the subject, under control, and set the white balance on a card in their light: from there they outshine daylight.`,
};
