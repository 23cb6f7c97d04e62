import type { AttenuationReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { shown } from "../format.js";

/** Reasons on attenuation. */
export const attenuationReasons: Texts<AttenuationReasons, string> = {
  red_goes_first: (p) =>
    `At ${shown(p.depth_m, 1)} m this water has taken ${shown(p.red_stops, 1)} stops from the red channel, ${shown(p.green_stops, 1)} from green and ${shown(p.blue_stops, 1)} from blue.`,
  no_daylight_relative: () =>
    "Without daylight the losses are those that an even sky of 5500 K would suffer; no illuminance is given.",
  sun_path: (p) =>
    `The sun's slant lengthens the way through the water: the mean path cosine is ${shown(p.mu0, 2)}, against 0.90 for the tables.`,
};
