import type { MarkReasons } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { densityOf, depth, percent, shown, stops } from "./format.js";

const CHANNELS = { red: "Le rouge", green: "Le vert", blue: "Le bleu" } as const;

const ev = (value: number): string => `IL ${shown(value, 1)}`;

const used = (p: { used_ev100: number; next_ev100: number }): string => {
  const off = p.next_ev100 - p.used_ev100;
  if (Math.abs(off) < 1 / 6) return `et vous avez réglé ${ev(p.used_ev100)}, ce qui était juste`;
  return `et vous avez réglé ${ev(p.used_ev100)} : trop ${off > 0 ? "clair" : "sombre"} de ${stops(Math.abs(off))}`;
};

/** Ce que les chartes de la plongée disent de ce qui était prévu. */
export const markReasons: Texts<MarkReasons, string> = {
  mark_exposure_agrees: (p, u) =>
    `À ${depth(p.depth_m, u)}, ${ev(p.predicted_ev100)} était prévu, ${used(p)}. La charte montre ${ev(p.next_ev100)}, ce qui concorde avec la prévision.`,
  mark_exposure_brighter: (p, u) =>
    `À ${depth(p.depth_m, u)}, ${ev(p.predicted_ev100)} était prévu, ${used(p)}. La charte montre ${stops(p.stops)} de lumière de plus que prévu : la prochaine fois, dans une telle lumière, réglez-y ${ev(p.next_ev100)}.`,
  mark_exposure_darker: (p, u) =>
    `À ${depth(p.depth_m, u)}, ${ev(p.predicted_ev100)} était prévu, ${used(p)}. La charte montre ${stops(p.stops)} de lumière de moins que prévu : la prochaine fois, dans une telle lumière, réglez-y ${ev(p.next_ev100)}.`,
  mark_water_agrees: (p) =>
    `${CHANNELS[p.channel]} a faibli aussi vite que dans l’eau que vous avez décrite, pour autant qu’on puisse en juger.`,
  mark_water_faster: (p) =>
    `${CHANNELS[p.channel]} a faibli ${percent(p.percent)} plus vite que dans l’eau que vous avez décrite : la prochaine fois, décrivez cette eau d’après ces chartes.`,
  mark_water_slower: (p) =>
    `${CHANNELS[p.channel]} a faibli ${percent(p.percent)} moins vite que dans l’eau que vous avez décrite : la prochaine fois, décrivez cette eau d’après ces chartes.`,
  mark_filter_agrees: (p) =>
    `La densité mesurée du filtre est de ${densityOf(p.measured)} (de ${shown(p.low, 2)} à ${shown(p.high, 2)}), ce qui concorde avec sa valeur de ${densityOf(p.nominal)}.`,
  mark_filter_differs: (p) =>
    `La densité mesurée du filtre est de ${shown(p.measured, 2)} (de ${shown(p.low, 2)} à ${shown(p.high, 2)}), et non de ${densityOf(p.nominal)} : la prochaine fois, préparez la plongée avec ${shown(p.measured, 2)}.`,
  mark_reach_neutral: (p, u) =>
    `À ${depth(p.depth_m, u)}, la balance des blancs a rendu la charte neutre, comme prévu.`,
  mark_reach_agrees: (p, u) =>
    `À ${depth(p.depth_m, u)}, il a manqué ${stops(p.measured_stops)} entre les canaux à la balance des blancs, ce qui concorde avec la prévision.`,
  mark_reach_shorter: (p, u) =>
    `À ${depth(p.depth_m, u)}, il a manqué ${stops(p.measured_stops)} entre les canaux à la balance des blancs, plus que prévu : cet appareil va moins loin que vous ne l’avez indiqué. Baissez white_balance_max_duv.`,
  mark_reach_farther: (p, u) =>
    `À ${depth(p.depth_m, u)}, il a manqué ${stops(p.measured_stops)} entre les canaux à la balance des blancs, moins que prévu : cet appareil va plus loin que vous ne l’avez indiqué. Relevez white_balance_max_duv.`,
};
