import type { LampPlan, LampSummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { filterName } from "./filter-name.js";

const LAMPS: Readonly<Record<LampPlan, string>> = {
  none: "sin focos de vídeo",
  lamps_off: "con los focos de vídeo apagados",
  lamps_with_filter: "con filtros en los focos de vídeo",
  lamps_with_daylight:
    "con los focos de vídeo encendidos junto a la luz del día y el balance de blancos hecho a las dos",
  lamps_lead: "con los focos de vídeo encendidos y el balance de blancos hecho a su luz",
  lamps_only: "solo con los focos de vídeo",
  daylight_leads: "con los focos de vídeo encendidos y el balance de blancos hecho a la luz del día",
};

/** Qué se hace con los focos de vídeo, en una frase. */
export const lampSummary: Texts<LampSummaryCodes, string> = {
  lamps_off: () => "Deje apagados los focos de vídeo: su color no casaría con la luz del día.",
  lamps_with_filter: () =>
    "Ponga los filtros en los focos de vídeo y haga el balance de blancos a la luz del día de esa profundidad.",
  lamps_with_daylight: () =>
    "Deje encendidos los focos de vídeo y haga el balance de blancos a las dos luces juntas.",
  lamps_lead: () => "Deje que manden los focos de vídeo y haga el balance de blancos a su luz.",
  lamps_only: () =>
    "Haga el balance de blancos con una tarjeta a la luz de los focos de vídeo, a la distancia de trabajo.",
  daylight_leads: () => "Los focos de vídeo apenas se notan frente a la luz del día.",
  close_lamps: (p) =>
    `Hay poca diferencia: ${LAMPS[p.plan]}${p.filter ? `, y ${p.filter.kind === "none" ? "sin filtro" : `con ${filterName(p.filter)}`} en el objetivo` : ""}, el resultado sería casi el mismo.`,
};
