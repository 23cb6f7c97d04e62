import type { MixedLightReasons } from "@sunfathom/planner";
import type { Texts, TextUnits } from "../../problems/texts.js";
import { brightness, depth, distance, lumens, redder, span, stops, strength } from "../format.js";

function haveThem({ verdict, closer }: MixedLightReasons["to_lead"], u?: TextUnits): string {
  const from = closer ? ` They can do it from ${distance(closer.distance_m, u)}.` : "";
  if (verdict === "enough") return "Your lights have that.";
  if (verdict === "closer") return `Your lights have less.${from}`;
  if (verdict === "stronger") return "Only stronger lights can do it, with their heat, glare and weight.";
  return "No lights that divers carry give that: work with daylight, go closer or film when the sun is lower.";
}

/** Reasons on mixed light. */
export const mixedLightReasons: Texts<MixedLightReasons, string> = {
  lamps_only: (p) =>
    `Your video lights are the only light: set the white balance in their light. The water between light, subject and camera still costs ${stops(p.red)} of red, ${stops(p.green)} of green and ${stops(p.blue)} of blue, so a card at working distance is better than a Kelvin preset.`,
  daylight_only: () => "No video light is on: there is nothing to mix.",
  lights_fight: (p, u) =>
    `At ${depth(p.depth_m, u)}, with the white balance set in daylight, whatever the video lights reach shows a ${strength(p.split)} colour cast, ${redder(p.red_excess)}. No single white balance gets rid of it.`,
  lamps_lead: (p, u) =>
    `At ${depth(p.depth_m, u)} your video lights outshine daylight by ${stops(p.green)} in green. Set the white balance in their light; daylight hardly tints the subject.`,
  daylight_leads: (p, u) =>
    `At ${depth(p.depth_m, u)} daylight outshines your video lights by ${stops(-p.green)} in green. Set the white balance in daylight; the video lights hardly show.`,
  mixing_zone: (p, u) => `From ${span(p.from_m, p.to_m, u)} video lights and daylight mix visibly.`,
  lit_haze: (p) =>
    `Backscatter between camera and subject is about ${brightness(p.percent)} as bright as a grey subject (${brightness(p.low)} to ${brightness(p.high)}). Hold the video lights far from the lens, point them outwards, so that only the edge of the beam reaches the subject, and come closer.`,
  to_lead: (p, u) =>
    `At ${depth(p.depth_m, u)}, to lead daylight by ${stops(p.stops)} on a subject ${distance(p.distance_m, u)} from the video lights takes about ${lumens(p.likely_lm)} lm in all (${lumens(p.low_lm)} to ${lumens(p.high_lm)} lm). ${haveThem(p, u)}`,
  upright_subject: () =>
    "Video lights and daylight are compared on an upright subject, which catches only part of the light from above.",
};
