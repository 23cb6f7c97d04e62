import type { TakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { filterName, kindName } from "./filter-name.js";
import { distance, neutral, shown } from "./format.js";

/** Qué llevar, y para qué. */
export const take: Texts<TakeCodes, TakeText> = {
  lens_filter: (p) => ({ what: filterName(p.filter), why: "Según el plan, va en el objetivo." }),
  neutral_density: (p) => ({ what: neutral(p.density), why: "Sin él hay demasiada luz." }),
  lamp_filters: (p) => ({
    what: `${filterName(p.filter)} para cada foco de vídeo`,
    why: "Con él, su luz casa con la luz del día de esa profundidad.",
  }),
  lamp_filters_lacking: (p) => ({
    what: `un ${kindName(p.kind)} de densidad ${shown(p.density, 1)} para cada foco de vídeo`,
    why: "En su equipo no hay ninguno que case. Con estos podría dejar encendidos los focos de vídeo.",
  }),
  filter_mount: (p) => ({
    what: { flip: "el portafiltros abatible", clip_on: "el soporte de clip" }[p.mount],
    why: "Sujeta el filtro delante del puerto.",
  }),
  lamp: (p, u) => ({
    what: p.check ? "los focos de vídeo, cargados y comprobados" : "los focos de vídeo",
    why: p.check
      ? `El plan cuenta con toda su luz, desde ${distance(p.check.distance_m, u)}.`
      : "En esta inmersión se quedan apagados.",
  }),
  dive_light: () => ({
    what: "una linterna de buceo",
    why: "Es la luz con la que bucea.",
  }),
  card: () => ({
    what: "una tarjeta gris o blanca, o una pizarra blanca",
    why: "Con ella se hace cada balance de blancos: engánchela donde la alcance con una mano.",
  }),
  spares: () => ({
    what: "baterías cargadas, una tarjeta de memoria vacía, juntas tóricas de repuesto y un desecante",
    why: "Una batería agotada, una tarjeta llena, una fuga o un puerto empañado acaban con la filmación.",
  }),
};
