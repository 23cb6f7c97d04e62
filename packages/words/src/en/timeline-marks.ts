import type { MarkReasons } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { densityOf, depth, shown, stops } from "./format.js";

const CHANNELS = { red: "Red", green: "Green", blue: "Blue" } as const;

const ev = (value: number): string => `EV ${shown(value, 1)}`;

const used = (p: { used_ev100: number; next_ev100: number }): string => {
  const off = p.next_ev100 - p.used_ev100;
  if (Math.abs(off) < 1 / 6) return `and you used ${ev(p.used_ev100)}, which was right`;
  return `and you used ${ev(p.used_ev100)}: ${stops(Math.abs(off))} too ${off > 0 ? "bright" : "dark"}`;
};

/** What cards of the dive say of what was predicted. */
export const markReasons: Texts<MarkReasons, string> = {
  mark_exposure_agrees: (p, u) =>
    `At ${depth(p.depth_m, u)} ${ev(p.predicted_ev100)} was predicted, ${used(p)}. The card shows ${ev(p.next_ev100)}, which agrees with the prediction.`,
  mark_exposure_brighter: (p, u) =>
    `At ${depth(p.depth_m, u)} ${ev(p.predicted_ev100)} was predicted, ${used(p)}. The card shows ${stops(p.stops)} more light than predicted: next time in such light set ${ev(p.next_ev100)} there.`,
  mark_exposure_darker: (p, u) =>
    `At ${depth(p.depth_m, u)} ${ev(p.predicted_ev100)} was predicted, ${used(p)}. The card shows ${stops(p.stops)} less light than predicted: next time in such light set ${ev(p.next_ev100)} there.`,
  mark_water_agrees: (p) =>
    `${CHANNELS[p.channel]} faded as fast as the water you gave has it, as far as anyone can tell.`,
  mark_water_faster: (p) =>
    `${CHANNELS[p.channel]} faded ${shown(p.percent)} % faster than the water you gave has it: next time describe this water by these cards.`,
  mark_water_slower: (p) =>
    `${CHANNELS[p.channel]} faded ${shown(p.percent)} % more slowly than the water you gave has it: next time describe this water by these cards.`,
  mark_filter_agrees: (p) =>
    `The filter measures ${densityOf(p.measured)} (${shown(p.low, 2)} to ${shown(p.high, 2)}), which agrees with its ${densityOf(p.nominal)}.`,
  mark_filter_differs: (p) =>
    `The filter measures ${shown(p.measured, 2)} (${shown(p.low, 2)} to ${shown(p.high, 2)}), not ${densityOf(p.nominal)}: next time plan with ${shown(p.measured, 2)}.`,
  mark_reach_neutral: (p, u) =>
    `At ${depth(p.depth_m, u)} the white balance made the card neutral, as predicted.`,
  mark_reach_agrees: (p, u) =>
    `At ${depth(p.depth_m, u)} the white balance fell short by ${stops(p.measured_stops)} between channels, which agrees with the prediction.`,
  mark_reach_shorter: (p, u) =>
    `At ${depth(p.depth_m, u)} the white balance fell short by ${stops(p.measured_stops)} between channels, more than predicted: this camera reaches less far than you gave. Lower white_balance_max_duv.`,
  mark_reach_farther: (p, u) =>
    `At ${depth(p.depth_m, u)} the white balance fell short by ${stops(p.measured_stops)} between channels, less than predicted: this camera reaches farther than you gave. Raise white_balance_max_duv.`,
};
