import type { LightReasons, Overhead } from "@sunfathom/planner";
import { type Compass, pointOf } from "../../numbers/compass.js";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, stops, wholeStops } from "../format.js";

/** Reasons on the light itself, which several decisions give. */
export const lightReasons: Texts<LightReasons, string> = {
  cct_without_meaning: (p, u) =>
    `From ${depth(p.depth_m, u)} down the light is too far from any white for a colour temperature in kelvin. No kelvin preset fits it; a card does, as far as the camera reaches.`,
  cct_beyond_locus: (p, u) =>
    `From ${depth(p.depth_m, u)} down the light is bluer than any glowing body: it has no colour temperature in kelvin. No kelvin preset fits it; a card does, as far as the camera reaches.`,
  red_not_only_transmitted: (p, u) =>
    `Below about ${depth(p.depth_m, u)} most of the last red is made in the water itself, by inelastic scattering and fluorescence. This model counts only the red that comes down from the surface, so do not trust its figures for red there: they are too low.`,
  sun_stands: (p) =>
    `At ${p.local ? `${p.local.time.slice(11)} local time` : utc(p.time)} the sun is ${shown(p.elevation_deg)} degrees above the horizon there, in the ${pointOf(COMPASS, p.azimuth_deg)}.`,
  cloud_fills_shadow: (p) =>
    `Cloud gives the subject ${stops(p.stops)} more light than a clear sky would: it lights the side that the sun leaves in shadow.`,
  clock_shows_twice: (p) =>
    `The clocks show this local time twice that day; this answer uses the first, ${utc(p.time)}.`,
  overhead_cuts: (p) =>
    `${COVERS[p.overhead]} ${wholeStops(p.stops)} of daylight here, compared with open water at the same depth.`,
  night_there: () =>
    "It is night at that place and time: there is no daylight, and your video lights are the only light.",
};

const COVERS: Readonly<Record<Overhead, string>> = {
  none: "Open water costs",
  overhang: "The overhang costs about",
  cavern: "The cavern costs about",
  cave: "The cave costs",
  wreck: "The wreck around you costs about",
  ice: "Ice and snow cost about",
};

const COMPASS: Compass<string> = [
  "north",
  "north-east",
  "east",
  "south-east",
  "south",
  "south-west",
  "west",
  "north-west",
];

/** An instant to the minute. */
const utc = (time: string): string => `${time.slice(0, 16).replace("T", " ")} UTC`;
