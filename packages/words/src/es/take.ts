import type { TakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { filterName, kindName } from "./filter-name.js";
import { densityOf, neutral } from "./format.js";

/** Qué llevar, y para qué. */
export const take: Texts<TakeCodes, TakeText> = {
  lens_filter: (p) => ({ what: filterName(p.filter), why: "Según el plan, va en el objetivo." }),
  neutral_density: (p) => ({ what: neutral(p.density), why: "Sin él hay demasiada luz." }),
  lamp_filters: (p) => ({
    what: `${filterName(p.filter)} para cada foco de vídeo`,
    why: "Con él, su luz casa con la del día a profundidad.",
  }),
  lamp_filters_lacking: (p) => ({
    what: `un ${kindName(p.kind)} de densidad ${densityOf(p.density)} para cada foco de vídeo`,
    why: "En su equipo no hay ninguno que case. Con estos podría dejar encendidos los focos de vídeo.",
  }),
  lamp: () => ({
    what: "los focos de vídeo",
    why: "El plan los usa, o los deja apagados pero montados en el equipo de cámara.",
  }),
  card: () => ({
    what: "una tarjeta gris o blanca",
    why: "Con ella se hace cada balance de blancos: engánchela donde la alcance con una mano.",
  }),
  spares: () => ({
    what: "baterías cargadas, una tarjeta de memoria vacía, juntas tóricas de repuesto y un desecante",
    why: "Una batería agotada, una tarjeta llena, una fuga o un puerto empañado acaban con la filmación.",
  }),
};
