import type { WaysOut } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { kindName } from "./filter-name.js";
import { distance, shown, stops } from "./format.js";

/** Salidas donde los focos de vídeo y la luz del día no casan. */
export const waysOut: Texts<WaysOut, string> = {
  lamps_off: (p) =>
    `Apague los focos de vídeo, déjelos montados en el equipo y haga el balance de blancos a la luz del día de esa profundidad. Con eso el motivo pierde ${stops(p.cost_stops)}.`,
  lamp_filter: (p) =>
    `Ponga antes de la inmersión en cada foco de vídeo un ${kindName(p.kind)} de densidad aproximada ${shown(p.density, 1)}: lo iguala a la luz del día de aquí${p.is_seen ? ", aunque aún deja una dominante visible" : ""}. Haga el balance de blancos a la luz del día de esa profundidad.`,
  balance_to_lamps: () =>
    "Haga el balance de blancos con una tarjeta iluminada por los focos de vídeo: los colores del motivo saldrán bien, y todo lo que solo recibe luz del día tomará el color del agua.",
  balance_to_both: () =>
    "Deje encendidos los focos de vídeo y haga el balance de blancos con una tarjeta junto al motivo, a las dos luces juntas: los colores del motivo saldrán bien, y lo que no alcanzan los focos de vídeo tomará el color del agua.",
  come_closer: (p, u) =>
    `Acerque los focos de vídeo hasta que estén a ${distance(p.distance_m, u)} del motivo, con la flotabilidad controlada, y haga el balance de blancos con una tarjeta iluminada por ellos: desde ahí superan a la luz del día.`,
};
