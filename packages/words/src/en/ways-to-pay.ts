import type { WaysToPay } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { dialFNumber, dialIso, dialShutter } from "./dial.js";
import { depth, distance, lumens, neutral, shown, stops } from "./format.js";

/** Ways to make up for lost light, or to get rid of too much. */
export const waysToPay: Texts<WaysToPay, string> = {
  wide_open: (p) =>
    `Open the aperture fully, to f/${dialFNumber(p.f_number)}; ISO ${dialIso(p.iso)} is then enough.`,
  depth_of_field: (p) =>
    `For more depth of field, stop down to f/${dialFNumber(p.f_number)} and go up to ISO ${dialIso(p.iso)}.`,
  more_gain: (p) =>
    `ISO ${dialIso(p.iso)} would do it, with more noise. You allow this camera up to ISO ${dialIso(p.allowed)}.`,
  close_aperture: (p) =>
    p.enough
      ? `Close the aperture to f/${dialFNumber(p.f_number)}.`
      : `Close the aperture to f/${dialFNumber(p.f_number)}, as far as it goes. That alone is not enough.`,
  neutral_density: (p) => `Mount ${neutral(p.density)}.`,
  shorter_shutter: (p) =>
    `Shorten the exposure to ${dialShutter(p.shutter_s)}; movement looks less smooth in video.`,
  longer_shutter: (p) =>
    `Set the exposure time to ${dialShutter(p.shutter_s)}: that gains ${stops(p.gains_stops)}, with more motion blur.`,
  filter_off: (p) => `Take the filter off the lens: it costs ${stops(p.gains_stops)}.`,
  wait_for_sun: (p) =>
    `Plan the dive for when the sun is ${shown(p.elevation_deg)} degrees high that day, rather than wait under water: that gains ${stops(p.gains_stops)}.`,
  if_sun_rises: (p) =>
    `If the sun gets ${shown(p.elevation_deg)} degrees high there, plan the dive for then, rather than wait under water: that gains ${stops(p.gains_stops)}.`,
  shallower: (p, u) => `At ${depth(p.depth_m, u)} there is enough light, if your plan takes you there.`,
  add_lamp: (p, u) =>
    `Add a white video light of about ${lumens(p.flux_lm)} lm with a ${shown(p.beam_angle_deg)} degree beam at ${distance(p.distance_m, u)} from the subject, and set the white balance on a card in its light.`,
};
