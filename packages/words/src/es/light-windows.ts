import type { LightWindowReasons, WindowAim } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { percent, shown, stops } from "./format.js";

const AIMS: Readonly<Record<WindowAim, string>> = {
  natural_colour: "el color natural y la luz del día que baja sobre el motivo",
  sunlit_background: "el color y la luz del agua abierta detrás del motivo",
  lamps_lead: "el color y cuánto superan sus focos de vídeo a la luz del día sobre el motivo",
};

/** Lo que cubre el cielo, en octavos. */
const clouds = (oktas: number): string => {
  if (oktas === 0) return ", con el cielo despejado";
  if (oktas === 8) return ", con el cielo cubierto";
  return oktas === 1 ? ", con un octavo de nubes" : `, con ${shown(oktas)} octavos de nubes`;
};

const sky = (p: { elevation_deg: number; cloud_oktas: number }): string =>
  `el sol está a ${shown(p.elevation_deg)} grados${clouds(p.cloud_oktas)}`;

const colour = (delta_e00: number): string =>
  Math.abs(delta_e00) < 0.05
    ? "el mismo error de color"
    : `${shown(Math.abs(delta_e00), 1)} ${delta_e00 > 0 ? "más" : "menos"} de error de color`;

const light = (less_stops: number): string =>
  Math.abs(less_stops) < 1 / 6
    ? "más o menos la misma luz"
    : `${stops(Math.abs(less_stops))} ${less_stops > 0 ? "menos" : "más"} de la luz que busca`;

/** Por qué las franjas de luz están donde están. */
export const lightWindowReasons: Texts<LightWindowReasons, string> = {
  window_best: (p) => `La mejor del día: ${sky(p)}.`,
  window_only: (p) => `La única franja del día con sol suficiente: ${sky(p)}.`,
  window_behind: (p) => `Frente a la mejor del día: ${colour(p.more_delta_e00)} y ${light(p.less_stops)}.`,
  window_as_good: (p) =>
    `Tan buena como la mejor del día, hasta donde se puede distinguir: ${colour(p.more_delta_e00)} y ${light(p.less_stops)}.`,
  windows_ranked: (p) =>
    `Las franjas se ordenan según ${AIMS[p.aim]}. Un paso de luz pesa tanto como un ${percent(p.percent_per_stop)} del error de color.`,
  windows_sky_assumed: (p) =>
    `En ${p.days} de ${p.of_days} ${p.of_days === 1 ? "día" : "días"} hay horas sin pronóstico: ahí se supone el cielo despejado. Envíe su pronóstico cuando se acerque el día.`,
  windows_forecast_unused: (p) =>
    `${p.entries} ${p.entries === 1 ? "entrada" : "entradas"} del pronóstico no ${p.entries === 1 ? "afecta" : "afectan"} a ninguna franja: otro día, una hora fuera del horario o un día con todas sus horas dadas.`,
  windows_sun_too_low: (p) =>
    `${p.windows === 1 ? "Se omite" : "Se omiten"} ${p.windows} ${p.windows === 1 ? "franja" : "franjas"}: durante parte del tiempo el sol está por debajo de ${shown(p.min_elevation_deg)} grados, y ahí este modelo no vale.`,
  windows_interpolated: (p) =>
    `Las cifras se calculan para alturas fijas del sol y se unen en línea recta: el error de color es exacto con un margen de ${shown(p.delta_e00, 2)}, y la luz, de ${shown(p.stops, 1)} pasos.`,
  windows_spread_shared: () =>
    "La incertidumbre de las cifras se calculó para la mejor franja y se aplica también a las demás.",
};
