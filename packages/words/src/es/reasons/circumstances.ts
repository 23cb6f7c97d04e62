import type { CircumstanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, wholeStops } from "../format.js";

/** Lo que piden, aparte del plan, la luz, el lugar y la cámara de una inmersión. */
export const circumstanceReasons: Texts<CircumstanceReasons, string> = {
  dense_for_balance: (p, u) =>
    `Un filtro tan denso es para el balance de blancos: con él, una tarjeta sale neutra hasta unos ${depth(p.with_m, u)}; sin él, ${p.without ? `solo hasta ${depth(p.without.to_m, u)}` : "en ningún punto"}.`,
  mouth_is_brighter: (p) =>
    `Hacia la boca, el agua es unos ${wholeStops(p.stops)} más clara: para un azul enmarcado en negro, exponga para ella.${p.lamps ? ` Para una inmersión más adentro, con más de ${wholeStops(p.lamps.spare_stops)} menos de luz, filme sin filtro, con los focos de vídeo.` : ""}`,
  subject_against_light: (p) =>
    `A contraluz, la imagen es unos ${wholeStops(p.stops)} más clara que el motivo. Para una silueta, cierre otro tanto: el filtro y el balance de blancos apenas importan entonces.`,
  low_sun_moves: (p) =>
    `Con el sol a ${shown(p.elevation_deg)} grados, la luz cambia deprisa: ajuste de nuevo la exposición y el balance de blancos cada diez minutos.`,
  cloud_lights_evenly: () =>
    "Con el cielo cubierto apenas importa hacia dónde filme, y las imágenes salen planas. Si asoma el sol, ajuste de nuevo la exposición y el balance de blancos.",
  weed_tints: () =>
    "Las algas se tragan luz y tiñen el resto: debajo, ajuste de nuevo la exposición y el balance de blancos.",
  blue_is_missing: () =>
    "En esta agua falta azul, más que rojo, y ningún filtro lo añade. Este frena el verde, para que la cámara pueda subir los dos.",
  automatic_colours: (p) =>
    `Los colores automáticos piden poca agua en la imagen: acérquese${p.sun_behind ? ", con el sol a su espalda" : ""}. En la edición, ponga el punto blanco en arena clara, una tablilla o una botella.`,
};
