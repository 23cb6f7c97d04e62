import type { MixedLightReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { lumens, metres, redder, shown, stops } from "../format.js";

function haveThem({ verdict, closer }: MixedLightReasons["to_lead"]): string {
  const from = closer ? ` They do it from ${shown(closer.distance_m, 2)} m.` : "";
  if (verdict === "enough") return "Your lights have that.";
  if (verdict === "closer") return `Your lights have less.${from}`;
  if (verdict === "stronger") return "Only stronger lights do it, with their heat, glare and weight.";
  return "No lights that divers carry give that: work with daylight, go closer or film when the sun is lower.";
}

/** Reasons on mixed light. */
export const mixedLightReasons: Texts<MixedLightReasons, string> = {
  lamps_only: (p) =>
    `Lamps are the only light: balance to them. The water between lamp, subject and camera still takes ${shown(p.red, 2)} stops of red, ${shown(p.green, 2)} of green and ${shown(p.blue, 2)} of blue, so a card at working distance is better than a kelvin setting.`,
  daylight_only: () => "No lamp is on: there is nothing to mix.",
  lights_fight: (p) =>
    `At ${shown(p.depth_m, 1)} m, balanced to daylight, what the lamps light differs from what daylight lights by ${shown(p.split, 1)} (CIEDE2000), ${redder(p.red_excess)}: a visible split that one balance cannot mend.`,
  lamps_lead: (p) =>
    `At ${shown(p.depth_m, 1)} m the lamps outshine daylight by ${shown(p.green, 1)} stops in green: balance to the lamps, and daylight hardly tints the subject.`,
  daylight_leads: (p) =>
    `At ${shown(p.depth_m, 1)} m daylight outshines the lamps by ${shown(-p.green, 1)} stops in green: balance to daylight; the lamps hardly show.`,
  mixing_zone: (p) => `Lamps and daylight mix visibly from ${shown(p.from_m, 1)} to ${shown(p.to_m, 1)} m.`,
  lit_haze: (p) =>
    `Haze that the lamps light between camera and subject is about ${shown(p.percent)} % as bright as a grey subject (${shown(p.low)} to ${shown(p.high)} %): hold the lamps far from the lens and pointing past the subject, and come closer.`,
  to_lead: (p) =>
    `At ${metres(p.depth_m)} m, to lead daylight by ${stops(p.stops)} on a subject ${shown(p.distance_m, 1)} m from the video lights takes about ${lumens(p.likely_lm)} lm in all (${lumens(p.low_lm)} to ${lumens(p.high_lm)} lm). ${haveThem(p)}`,
  upright_subject: () =>
    "Lamp and daylight are compared on an upright subject, which receives only a part of the light that comes from above.",
};
