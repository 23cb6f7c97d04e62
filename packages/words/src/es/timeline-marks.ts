import type { MarkReasons } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { densityOf, depth, percent, shown, stops } from "./format.js";

const CHANNELS = { red: "El rojo", green: "El verde", blue: "El azul" } as const;

const ev = (value: number): string => `EV ${shown(value, 1)}`;

const used = (p: { used_ev100: number; next_ev100: number }): string => {
  const off = p.next_ev100 - p.used_ev100;
  if (Math.abs(off) < 1 / 6) return `y usted usó ${ev(p.used_ev100)}, que era lo correcto`;
  return `y usted usó ${ev(p.used_ev100)}: ${stops(Math.abs(off))} de ${off > 0 ? "sobreexposición" : "subexposición"}`;
};

/** Lo que dicen las tarjetas de la inmersión sobre lo previsto. */
export const markReasons: Texts<MarkReasons, string> = {
  mark_exposure_agrees: (p, u) =>
    `A ${depth(p.depth_m, u)} se preveía ${ev(p.predicted_ev100)}, ${used(p)}. La tarjeta muestra ${ev(p.next_ev100)}, que concuerda con lo previsto.`,
  mark_exposure_brighter: (p, u) =>
    `A ${depth(p.depth_m, u)} se preveía ${ev(p.predicted_ev100)}, ${used(p)}. La tarjeta muestra ${stops(p.stops)} más de luz de lo previsto: la próxima vez, con esa luz, ajuste allí ${ev(p.next_ev100)}.`,
  mark_exposure_darker: (p, u) =>
    `A ${depth(p.depth_m, u)} se preveía ${ev(p.predicted_ev100)}, ${used(p)}. La tarjeta muestra ${stops(p.stops)} menos de luz de lo previsto: la próxima vez, con esa luz, ajuste allí ${ev(p.next_ev100)}.`,
  mark_water_agrees: (p) =>
    `${CHANNELS[p.channel]} se apagó tan deprisa como en el agua que usted indicó, hasta donde se puede distinguir.`,
  mark_water_faster: (p) =>
    `${CHANNELS[p.channel]} se apagó un ${percent(p.percent)} más deprisa que en el agua que usted indicó: la próxima vez describa esta agua con estas tarjetas.`,
  mark_water_slower: (p) =>
    `${CHANNELS[p.channel]} se apagó un ${percent(p.percent)} más despacio que en el agua que usted indicó: la próxima vez describa esta agua con estas tarjetas.`,
  mark_filter_agrees: (p) =>
    `El filtro mide ${densityOf(p.measured)} (de ${shown(p.low, 2)} a ${shown(p.high, 2)}), lo que concuerda con el valor indicado, ${densityOf(p.nominal)}.`,
  mark_filter_differs: (p) =>
    `El filtro mide ${shown(p.measured, 2)} (de ${shown(p.low, 2)} a ${shown(p.high, 2)}) y no ${densityOf(p.nominal)}: la próxima vez planifique con ${shown(p.measured, 2)}.`,
  mark_reach_neutral: (p, u) =>
    `A ${depth(p.depth_m, u)} el balance de blancos dejó neutra la tarjeta, como estaba previsto.`,
  mark_reach_agrees: (p, u) =>
    `A ${depth(p.depth_m, u)} el balance de blancos se quedó corto en ${stops(p.measured_stops)} entre canales, lo que concuerda con lo previsto.`,
  mark_reach_shorter: (p, u) =>
    `A ${depth(p.depth_m, u)} el balance de blancos se quedó corto en ${stops(p.measured_stops)} entre canales, más de lo previsto: esta cámara llega menos lejos de lo que usted indicó. Baje white_balance_max_duv.`,
  mark_reach_farther: (p, u) =>
    `A ${depth(p.depth_m, u)} el balance de blancos se quedó corto en ${stops(p.measured_stops)} entre canales, menos de lo previsto: esta cámara llega más lejos de lo que usted indicó. Suba white_balance_max_duv.`,
};
