import type { LampPlan, SummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { setting } from "./dial.js";
import { choiceOf, filterName } from "./filter-name.js";
import { depth, fromTo, howOften, kelvin, stops } from "./format.js";

const LAMPS: Readonly<Record<LampPlan, string>> = {
  none: "sin focos de vídeo",
  lamps_off: "con los focos de vídeo apagados",
  lamps_with_filter: "con filtros en los focos de vídeo",
  lamps_lead: "con los focos de vídeo encendidos y el balance de blancos hecho a su luz",
  lamps_only: "solo con los focos de vídeo",
  daylight_leads: "con los focos de vídeo encendidos y el balance de blancos hecho a la luz del día",
};

/** El plan en unas pocas frases. */
export const summary: Texts<SummaryCodes, string> = {
  no_filter: () => "No monte ningún filtro de color.",
  mount: (p) => `Monte ${filterName(p.filter)}.`,
  carry: (p, u) => `Lleve ${filterName(p.filter)} y úselo ${fromTo(p.from_m, p.to_m, u)}.`,
  too_dark: (p, u) => `A ${depth(p.depth_m, u)} hay ${stops(p.shortfall_stops)} de luz de menos.`,
  expose: ({ from, to }, u) =>
    to === undefined || setting(to) === setting(from)
      ? `Exponga con ${setting(from)}.`
      : `A ${depth(from.depth_m, u)} exponga con ${setting(from)}; a ${depth(to.depth_m, u)}, con ${setting(to)}.`,
  balance: (p) =>
    `Haga el balance de blancos con la tarjeta al empezar${p.again > 0 ? ` y ${howOften(p.again)} más al bajar` : ""}.`,
  expose_by_itself: () => "Deje la exposición a la cámara.",
  balance_by_itself: () => "Deje el balance de blancos en automático.",
  balance_in_kelvin: (p) => `Ponga el balance de blancos en ${kelvin(p.cct_K)}.`,
  lamps_off: () => "Deje apagados los focos de vídeo: su color no casaría con la luz del día.",
  lamps_with_filter: () =>
    "Ponga los filtros en los focos de vídeo y haga el balance de blancos a la luz del día de esa profundidad.",
  lamps_lead: () => "Deje que manden los focos de vídeo y haga el balance de blancos a su luz.",
  lamps_only: () =>
    "Haga el balance de blancos con una tarjeta a la luz de los focos de vídeo, a la distancia de trabajo.",
  daylight_leads: () => "Los focos de vídeo apenas se notan frente a la luz del día.",
  close_filter: (p) => `Hay poca diferencia: ${choiceOf(p.filter)} daría casi el mismo resultado.`,
  close_lamps: (p) =>
    `Hay poca diferencia: ${LAMPS[p.plan]}${p.filter ? ` y ${p.filter.kind === "none" ? "sin filtro" : filterName(p.filter)} en el objetivo` : ""}, el resultado sería casi el mismo.`,
};
