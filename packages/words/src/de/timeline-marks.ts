import type { MarkReasons } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { densityOf, depth, percent, shown, stops } from "./format.js";

const CHANNELS = { red: "Rot", green: "Grün", blue: "Blau" } as const;

const ev = (value: number): string => `EV ${shown(value, 1)}`;

const used = (p: { used_ev100: number; next_ev100: number }): string => {
  const off = p.next_ev100 - p.used_ev100;
  if (Math.abs(off) < 1 / 6) return `und eingestellt war ${ev(p.used_ev100)}, das war richtig`;
  return `und eingestellt war ${ev(p.used_ev100)}: ${stops(Math.abs(off))} zu ${off > 0 ? "hell" : "dunkel"}`;
};

/** Was Karten des Tauchgangs zu dem sagen, was vorhergesagt war. */
export const markReasons: Texts<MarkReasons, string> = {
  mark_exposure_agrees: (p, u) =>
    `Auf ${depth(p.depth_m, u)} war ${ev(p.predicted_ev100)} vorhergesagt, ${used(p)}. Die Karte zeigt ${ev(p.next_ev100)}, das passt zur Vorhersage.`,
  mark_exposure_brighter: (p, u) =>
    `Auf ${depth(p.depth_m, u)} war ${ev(p.predicted_ev100)} vorhergesagt, ${used(p)}. Die Karte zeigt ${stops(p.stops)} mehr Licht als vorhergesagt: Stell bei solchem Licht dort nächstes Mal ${ev(p.next_ev100)} ein.`,
  mark_exposure_darker: (p, u) =>
    `Auf ${depth(p.depth_m, u)} war ${ev(p.predicted_ev100)} vorhergesagt, ${used(p)}. Die Karte zeigt ${stops(p.stops)} weniger Licht als vorhergesagt: Stell bei solchem Licht dort nächstes Mal ${ev(p.next_ev100)} ein.`,
  mark_water_agrees: (p) =>
    `${CHANNELS[p.channel]} schwand so schnell wie in dem Wasser, das du angegeben hast, soweit man das unterscheiden kann.`,
  mark_water_faster: (p) =>
    `${CHANNELS[p.channel]} schwand ${percent(p.percent)} schneller als in dem Wasser, das du angegeben hast: Beschreib dieses Wasser nächstes Mal mit diesen Karten.`,
  mark_water_slower: (p) =>
    `${CHANNELS[p.channel]} schwand ${percent(p.percent)} langsamer als in dem Wasser, das du angegeben hast: Beschreib dieses Wasser nächstes Mal mit diesen Karten.`,
  mark_filter_agrees: (p) =>
    `Gemessen hat der Filter die Dichte ${densityOf(p.measured)} (${shown(p.low, 2)} bis ${shown(p.high, 2)}), das passt zu seinen ${densityOf(p.nominal)}.`,
  mark_filter_differs: (p) =>
    `Gemessen hat der Filter die Dichte ${shown(p.measured, 2)} (${shown(p.low, 2)} bis ${shown(p.high, 2)}), nicht ${densityOf(p.nominal)}: Plane nächstes Mal mit ${shown(p.measured, 2)}.`,
  mark_reach_neutral: (p, u) =>
    `Auf ${depth(p.depth_m, u)} machte der Weißabgleich die Karte neutral, wie vorhergesagt.`,
  mark_reach_agrees: (p, u) =>
    `Auf ${depth(p.depth_m, u)} lag der Weißabgleich zwischen den Kanälen um ${stops(p.measured_stops)} daneben, das passt zur Vorhersage.`,
  mark_reach_shorter: (p, u) =>
    `Auf ${depth(p.depth_m, u)} lag der Weißabgleich zwischen den Kanälen um ${stops(p.measured_stops)} daneben, mehr als vorhergesagt: Diese Kamera reicht weniger weit als angegeben. Gib white_balance_max_duv kleiner an.`,
  mark_reach_farther: (p, u) =>
    `Auf ${depth(p.depth_m, u)} lag der Weißabgleich zwischen den Kanälen um ${stops(p.measured_stops)} daneben, weniger als vorhergesagt: Diese Kamera reicht weiter als angegeben. Gib white_balance_max_duv größer an.`,
};
