import type { LightReasons, Overhead } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { shown, stops } from "../format.js";

/** Reasons on the light itself, which several decisions give. */
export const lightReasons: Texts<LightReasons, string> = {
  cct_without_meaning: (p) =>
    `From ${shown(p.depth_m, 1)} m the light lies ${shown(Math.abs(p.duv), 3)} from the Planckian locus: a colour temperature in kelvin has no meaning there (CIE: beyond 0.05), so none is given. Balance on a card.`,
  cct_beyond_locus: (p) =>
    `From ${shown(p.depth_m, 1)} m the light is bluer than any glowing body: it has no colour temperature in kelvin. Balance on a card.`,
  red_not_only_transmitted: (p) =>
    `Below about ${shown(p.depth_m)} m the last red is made in the water itself, by inelastic scattering and fluorescence, more than it comes down from the surface. This model counts only what comes down, so red figures there are too low and not to be trusted.`,
  sun_stands: (p) =>
    `At ${utc(p.time)} the sun stands ${shown(p.elevation_deg)} degrees above the horizon there, at ${shown(p.azimuth_deg)} degrees from north.`,
  cloud_fills_shadow: (p) =>
    `Cloud gives the subject ${shown(p.stops, 1)} stops more light than a clear sky would: it lights the side that the sun leaves in shadow.`,
  clock_shows_twice: (p) =>
    `The clock shows this local time twice that day; the first is meant, ${utc(p.time)}.`,
  overhead_cuts: (p) =>
    `${COVERS[p.overhead]} ${stops(p.stops)} of daylight here, against open water at the same depth.`,
  night_there: () =>
    "It is night at that place and time: there is no daylight, and lamps are the only light.",
};

const COVERS: Readonly<Record<Overhead, string>> = {
  none: "Open water costs",
  overhang: "The overhang costs about",
  cavern: "The cavern costs about",
  cave: "The cave costs",
  wreck: "The wreck around you costs about",
  ice: "Ice and snow cost about",
};

/** An instant to the minute. */
const utc = (time: string): string => `${time.slice(0, 16).replace("T", " ")} UTC`;
