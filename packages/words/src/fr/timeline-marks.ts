import type { MarkReasons } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { densityOf, depth, percent, shown, stops } from "./format.js";

const CHANNELS = { red: "Le rouge", green: "Le vert", blue: "Le bleu" } as const;

const ev = (value: number): string => `EV ${shown(value, 1)}`;

const used = (p: { used_ev100: number; next_ev100: number }): string => {
  const off = p.next_ev100 - p.used_ev100;
  if (Math.abs(off) < 1 / 6) return `et vous avez réglé ${ev(p.used_ev100)}, ce qui était juste`;
  return `et vous avez réglé ${ev(p.used_ev100)} : ${stops(Math.abs(off))} trop ${off > 0 ? "clair" : "sombre"}`;
};

/** Ce que les chartes de la plongée disent de ce qui était prévu. */
export const markReasons: Texts<MarkReasons, string> = {
  mark_exposure_agrees: (p, u) =>
    `À ${depth(p.depth_m, u)}, ${ev(p.predicted_ev100)} était prévu, ${used(p)}. La charte montre ${ev(p.next_ev100)}, ce qui concorde avec la prévision.`,
  mark_exposure_brighter: (p, u) =>
    `À ${depth(p.depth_m, u)}, ${ev(p.predicted_ev100)} était prévu, ${used(p)}. La charte montre ${stops(p.stops)} de lumière en plus : la prochaine fois, dans une telle lumière, réglez-y ${ev(p.next_ev100)}.`,
  mark_exposure_darker: (p, u) =>
    `À ${depth(p.depth_m, u)}, ${ev(p.predicted_ev100)} était prévu, ${used(p)}. La charte montre ${stops(p.stops)} de lumière en moins : la prochaine fois, dans une telle lumière, réglez-y ${ev(p.next_ev100)}.`,
  mark_water_agrees: (p) =>
    `${CHANNELS[p.channel]} a faibli aussi vite que dans l’eau que vous avez donnée, autant qu’on puisse le distinguer.`,
  mark_water_faster: (p) =>
    `${CHANNELS[p.channel]} a faibli ${percent(p.percent)} plus vite que dans l’eau que vous avez donnée : la prochaine fois, décrivez cette eau par ces chartes.`,
  mark_water_slower: (p) =>
    `${CHANNELS[p.channel]} a faibli ${percent(p.percent)} moins vite que dans l’eau que vous avez donnée : la prochaine fois, décrivez cette eau par ces chartes.`,
  mark_filter_agrees: (p) =>
    `Le filtre mesure ${densityOf(p.measured)} (de ${shown(p.low, 2)} à ${shown(p.high, 2)}), ce qui concorde avec ses ${densityOf(p.nominal)}.`,
  mark_filter_differs: (p) =>
    `Le filtre mesure ${shown(p.measured, 2)} (de ${shown(p.low, 2)} à ${shown(p.high, 2)}), et non ${densityOf(p.nominal)} : la prochaine fois, préparez la plongée avec ${shown(p.measured, 2)}.`,
  mark_reach_neutral: (p, u) =>
    `À ${depth(p.depth_m, u)}, la balance des blancs a rendu la charte neutre, comme prévu.`,
  mark_reach_agrees: (p, u) =>
    `À ${depth(p.depth_m, u)}, il a manqué ${stops(p.measured_stops)} entre canaux à la balance des blancs, ce qui concorde avec la prévision.`,
  mark_reach_shorter: (p, u) =>
    `À ${depth(p.depth_m, u)}, il a manqué ${stops(p.measured_stops)} entre canaux à la balance des blancs, plus que prévu : cet appareil va moins loin que vous ne l’avez donné. Baissez white_balance_max_duv.`,
  mark_reach_farther: (p, u) =>
    `À ${depth(p.depth_m, u)}, il a manqué ${stops(p.measured_stops)} entre canaux à la balance des blancs, moins que prévu : cet appareil va plus loin que vous ne l’avez donné. Relevez white_balance_max_duv.`,
};
