import type { ClipReasons, MomentReasons, TimelineReasons } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import type { CueLines } from "../trip-texts.js";
import { settings } from "./dial.js";
import { between, castOf, depth, depths, percent, shown, stops } from "./format.js";

const minutes = (seconds: number): string => {
  if (seconds < 90) return `${shown(seconds)} ${Math.round(seconds) === 1 ? "segundo" : "segundos"}`;
  return `${shown(seconds / 60)} minutos`;
};

/** Por qué había que ajustar la cámara en un momento de la inmersión. */
export const momentReasons: Texts<MomentReasons, string> = {
  moment_first_balance: () => "Haga aquí el balance de blancos, antes de filmar.",
  moment_balance_again: (p) =>
    `Haga aquí un balance de blancos: el último deja ${castOf(p.shift_delta_e00)} que uno nuevo quitaría.`,
  moment_balance_done: (p) =>
    p.shift_delta_e00 > p.tolerance_delta_e00
      ? `Este balance de blancos hacía falta: quitó ${castOf(p.shift_delta_e00)}.`
      : "Este balance de blancos llegó pronto: el último aún servía.",
  moment_balance_behind_change: () =>
    "El filtro ha cambiado: el balance de blancos de antes ya no sirve detrás de él.",
  moment_filter_on: (p, u) => `El filtro se pone en el objetivo, a ${depth(p.depth_m, u)}.`,
  moment_filter_off: (p, u) => `El filtro se quita del objetivo, a ${depth(p.depth_m, u)}.`,
  moment_exposure: (p) =>
    `Ajuste de nuevo la exposición: hay ${stops(Math.abs(p.stops))} ${p.stops > 0 ? "más" : "menos"} de luz que la última vez.`,
};

/** Cómo queda el balance de un clip. */
export const clipReasons: Texts<ClipReasons, string> = {
  clip_balance_held: () =>
    "El último balance de blancos sirve para todo el clip: uno nuevo habría aportado poco.",
  clip_balance_close: (p) =>
    `Nadie puede decir si el último balance de blancos aún sirve: desde entonces ha surgido ${castOf(p.shift_delta_e00)}, con la incertidumbre que dejan el agua y la cámara.`,
  clip_balance_lost: (p) =>
    p.after_s < 1
      ? `El último balance de blancos ya no sirve cuando empieza el clip: uno nuevo habría quitado ${castOf(p.shift_delta_e00)}. Corrija el color de este clip por separado.`
      : `El último balance de blancos deja de servir a los ${minutes(p.after_s)} del clip: uno nuevo habría quitado ${castOf(p.shift_delta_e00)}. Corrija el color de esa parte por separado.`,
  clip_balance_not_set: () => "Antes de este clip no se hizo ningún balance de blancos.",
};

/** En qué se apoya la línea de tiempo. */
export const timelineReasons: Texts<TimelineReasons, string> = {
  timeline_as_planned: () =>
    "No ha indicado eventos: el filtro y el balance de blancos se toman del plan para esta inmersión, a las horas en que pasó por esas profundidades.",
  timeline_as_done: (p) =>
    p.events === 0
      ? "Ha indicado que no se tocaron ni el filtro ni el balance de blancos: los clips se juzgan según eso."
      : `Los clips se juzgan según lo que usted hizo: ${shown(p.events)} ${p.events === 1 ? "evento" : "eventos"}.`,
  timeline_filmed: (p, u) =>
    p.clips === 0
      ? `No ha indicado clips: el plan vale ${between(p.min_depth_m, p.max_depth_m, u)}.`
      : `El plan vale para las profundidades de sus clips, ${between(p.min_depth_m, p.max_depth_m, u)}.`,
  timeline_not_passed: (p, u) =>
    `El plan tiene pasos a ${depths(p.depths_m, u)} a los que la inmersión no volvió: se omiten.`,
  timeline_exposures_left_out: (p) =>
    `La luz cambió tantas veces que se ${p.moments === 1 ? "omite" : "omiten"} ${shown(p.moments)} ${p.moments === 1 ? "exposición nueva" : "exposiciones nuevas"}.`,
  timeline_drawn: (p) =>
    `La luz se calcula para profundidades y horas fijas y se une con rectas entre ellas: es exacta con un margen de ${shown(p.stops, 2)} pasos.`,
  timeline_spread_shared: () =>
    "La incertidumbre de los valores se calculó para el punto medio de la inmersión y se toma para toda ella.",
};

/** Líneas de un subtítulo. */
export const cueLines: Texts<CueLines, string> = {
  cue_title: () => "La luz de esta inmersión, clip a clip",
  cue_depths: (p, u) => `Filmado ${between(p.min_depth_m, p.max_depth_m, u)}`,
  cue_light: (p) =>
    `EV ${shown(p.ev100.likely, 1)} a ISO 100 (de ${shown(p.ev100.low, 1)} a ${shown(p.ev100.high, 1)})`,
  cue_settings: (p) => `Ajuste: ${settings(p)}`,
  cue_red: (p) =>
    `Rojo que queda: ${percent(p.percent.likely)} (de ${shown(p.percent.low)} a ${percent(p.percent.high)})`,
};
