import type { MixedLightMapTexts } from "../picture-texts.js";
import { textOf } from "../text-of.js";
import { cautions } from "./cautions.js";
import { between, depth, distance, lumens } from "./format.js";
import { waysOut } from "./ways-out.js";

export const mixedLightMap: MixedLightMapTexts = {
  headline: ({ verdict, depth_m, own_distance_m }, u) =>
    ({
      lights_fight: `At ${depth(depth_m, u)}, video lights ${distance(own_distance_m, u)} away and daylight fight`,
      lamps_lead: `At ${depth(depth_m, u)}, video lights ${distance(own_distance_m, u)} away lead`,
      daylight_leads: `At ${depth(depth_m, u)}, daylight leads over video lights ${distance(own_distance_m, u)} away`,
      lamps_only: `At ${depth(depth_m, u)}, video lights are the only light`,
      daylight_only: `At ${depth(depth_m, u)}, daylight is the only light`,
    })[verdict],
  assumed: ({ flux_lm, own_distance_m }, u) =>
    `You gave no video lights: this is for two of ${lumens(flux_lm / 2)} lm, ${distance(own_distance_m, u)} from the subject.`,
  across: "From the video lights to the subject",
  at_distance: ({ distance_m }, u) => distance(distance_m, u),
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  verdicts: {
    lamps_lead: "Video lights lead: set the white balance in their light",
    lights_fight: "They fight: one white balance leaves a colour cast in one of them",
    daylight_leads: "Daylight leads: set the white balance in daylight",
    lamps_only: "Video lights are the only light: set the white balance in their light",
    daylight_only: "Daylight is the only light",
  },
  own: ({ own_distance_m, ...dive }, u) =>
    `The video lights: ${distance(own_distance_m, u)} from the subject, ${between(dive.min_depth_m, dive.max_depth_m, u)}`,
  ways: ({ depth_m }, u) => `Ways out at ${depth(depth_m, u)}, the best first`,
  way: (way, u) => textOf(waysOut, way, u),
  cautions: [cautions.lamps_not_into_eyes, cautions.lamps_in_water_only, cautions.closer_under_control].join(
    " ",
  ),
  description: ({ end_depth_m, end_distance_m, verdict, depth_m, own_distance_m, ways_out }, u) =>
    [
      `A map of which light leads, from the surface down to ${depth(end_depth_m, u)}, with video lights up to ${distance(end_distance_m, u)} from the subject.`,
      `At ${depth(depth_m, u)} and ${distance(own_distance_m, u)}: ${VERDICTS[verdict]}.`,
      ...ways_out.slice(0, 1).map((way) => textOf(waysOut, way, u)),
    ].join(" "),
};

const VERDICTS = {
  lamps_lead: "the video lights lead",
  lights_fight: "the two fight",
  daylight_leads: "daylight leads",
  lamps_only: "the video lights are the only light",
  daylight_only: "daylight is the only light",
} as const;
