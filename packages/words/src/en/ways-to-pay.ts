import type { WaysToPay } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { dialFNumber, dialIso, dialShutter } from "./dial.js";
import { lumens, shown } from "./format.js";

/** Ways to pay for lost light, or to get rid of light in excess. */
export const waysToPay: Texts<WaysToPay, string> = {
  wide_open: (p) => `Aperture wide open at f/${dialFNumber(p.f_number)}: ISO ${dialIso(p.iso)}.`,
  depth_of_field: (p) =>
    `More depth of field at f/${dialFNumber(p.f_number)}, paid with ISO ${dialIso(p.iso)}.`,
  more_gain: (p) =>
    `ISO ${dialIso(p.iso)} would do it, beyond the ${dialIso(p.allowed)} that this camera is allowed: noise pays.`,
  close_aperture: (p) =>
    p.enough
      ? `Close the aperture to f/${dialFNumber(p.f_number)}.`
      : `Close the aperture to f/${dialFNumber(p.f_number)}, as far as it goes: not enough alone.`,
  neutral_density: (p) => `Mount neutral density ${shown(p.density, 1)} (${shown(p.stops, 1)} stops).`,
  shorter_shutter: (p) =>
    `Shorten the exposure to ${dialShutter(p.shutter_s)}; movement then looks less smooth in video.`,
  longer_shutter: (p) =>
    `Expose for ${dialShutter(p.shutter_s)}: ${shown(p.gains_stops, 1)} stops more, and more blur from movement.`,
  filter_off: (p) => `Take the filter off the lens: it holds back ${shown(p.gains_stops, 1)} stops.`,
  wait_for_sun: (p) =>
    `Wait until the sun stands ${shown(p.elevation_deg)} degrees high that day: ${shown(p.gains_stops, 1)} stops more.`,
  if_sun_rises: (p) =>
    `If the sun comes to stand ${shown(p.elevation_deg)} degrees high there, wait for it: ${shown(p.gains_stops, 1)} stops more.`,
  shallower: (p) => `At ${shown(p.depth_m, 1)} m there is light enough, should your dive take you there.`,
  add_lamp: (p) =>
    `A white lamp of about ${lumens(p.flux_lm)} lm with a beam of ${shown(p.beam_angle_deg)} degrees at ${shown(p.distance_m, 1)} m; then balance to the lamp.`,
};
