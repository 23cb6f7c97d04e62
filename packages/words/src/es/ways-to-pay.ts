import type { WaysToPay } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { dialFNumber, dialIso, dialShutter } from "./dial.js";
import { depth, distance, lumens, neutral, shown, stops } from "./format.js";

/** Cómo compensar la luz que falta, o quitar la que sobra. */
export const waysToPay: Texts<WaysToPay, string> = {
  wide_open: (p) =>
    `Abra del todo el diafragma, a f/${dialFNumber(p.f_number)}; entonces basta ISO ${dialIso(p.iso)}.`,
  depth_of_field: (p) =>
    `Para más profundidad de campo, cierre a f/${dialFNumber(p.f_number)} y suba a ISO ${dialIso(p.iso)}.`,
  more_gain: (p) =>
    `Bastaría ISO ${dialIso(p.iso)}, con más ruido. Usted ha limitado esta cámara a ISO ${dialIso(p.allowed)}.`,
  close_aperture: (p) =>
    p.enough
      ? `Cierre el diafragma a f/${dialFNumber(p.f_number)}.`
      : `Cierre el diafragma a f/${dialFNumber(p.f_number)}, hasta donde llega. Con eso solo no basta.`,
  neutral_density: (p) => `Monte ${neutral(p.density)}.`,
  shorter_shutter: (p) =>
    `Acorte la exposición a ${dialShutter(p.shutter_s)}; en vídeo, el movimiento se verá menos fluido.`,
  longer_shutter: (p) =>
    `Ponga el tiempo de exposición en ${dialShutter(p.shutter_s)}: así gana ${stops(p.gains_stops)}, pero con más desenfoque de movimiento.`,
  filter_off: (p) => `Quite el filtro del objetivo: cuesta ${stops(p.gains_stops)}.`,
  wait_for_sun: (p) =>
    `Planee la inmersión para cuando el sol esté ese día a ${shown(p.elevation_deg)} grados de altura, en vez de esperar bajo el agua: así gana ${stops(p.gains_stops)}.`,
  if_sun_rises: (p) =>
    `Si el sol llega allí a ${shown(p.elevation_deg)} grados de altura, planee la inmersión para entonces, en vez de esperar bajo el agua: así gana ${stops(p.gains_stops)}.`,
  shallower: (p, u) => `A ${depth(p.depth_m, u)} hay luz suficiente, si su plan de inmersión pasa por ahí.`,
  add_lamp: (p, u) =>
    `Añada un foco de vídeo blanco de unos ${lumens(p.flux_lm)} con un haz de ${shown(p.beam_angle_deg)} grados a ${distance(p.distance_m, u)} del motivo, y haga el balance de blancos con una tarjeta iluminada por él.`,
};
