import type { AttenuationReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, stops } from "../format.js";

/** Reasons on attenuation. */
export const attenuationReasons: Texts<AttenuationReasons, string> = {
  red_goes_first: (p, u) =>
    `At ${depth(p.depth_m, u)} the red channel has lost ${stops(p.red_stops)} to this water, green ${stops(p.green_stops)} and blue ${stops(p.blue_stops)}.`,
  no_daylight_relative: () =>
    "There is no daylight here, so the losses are worked out for an even sky of 5500 K. No illuminance is given.",
  sun_path: (p) =>
    `The sun's slant lengthens the path through the water: the mean path cosine is ${shown(p.mu0, 2)}, and 0.90 in the tables.`,
};
