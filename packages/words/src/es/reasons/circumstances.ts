import type { CircumstanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, wholeStops } from "../format.js";

/** Lo que piden, aparte del plan, la luz, el lugar y la cámara de una inmersión. */
export const circumstanceReasons: Texts<CircumstanceReasons, string> = {
  dense_for_balance: (p, u) =>
    `El filtro ha de ser tan denso porque el balance de blancos de la cámara tiene sus límites: con él, una tarjeta sale neutra hasta unos ${depth(p.with_m, u)}; sin él, ${p.without ? `solo hasta ${depth(p.without.to_m, u)}` : "en ningún punto de esta inmersión"}. Uno más débil ahorra luz y deja más dominante, antes que nada en lo más hondo.`,
  mouth_is_brighter: (p) =>
    `Hacia la boca, el agua de fuera es ${wholeStops(p.stops)} más clara, más o menos, que lo que filma dentro. Para una boca azul con la roca oscura alrededor, exponga para el agua y deje que el resto quede negro.${p.lamps ? ` Para una inmersión más adentro, con más de ${wholeStops(p.lamps.spare_stops)} menos de luz, deje el filtro en tierra y filme con los focos de vídeo.` : ""}`,
  filter_beside_lights: () =>
    "Aquí sus focos de vídeo no superan a la luz del día: aportan rojo, y el filtro frena el azul y el verde que a la luz del día le sobran. Donde la superan, desde más cerca, filmaría sin filtro.",
  subject_against_light: (p) =>
    `A contraluz, la imagen entera es ${wholeStops(p.stops)} más clara, más o menos, que un motivo gris. Este plan muestra el motivo en color, y el agua de detrás sale pálida. Para una silueta, cierre otro tanto y exponga para el agua; el balance de blancos y el filtro apenas importan entonces.`,
  low_sun_moves: (p) =>
    `Con el sol a ${shown(p.elevation_deg)} grados, la luz cambia deprisa, también a la misma profundidad. Ajuste de nuevo la exposición y el balance de blancos cada diez minutos.`,
  cloud_lights_evenly: () =>
    "Con el cielo cubierto, la luz llega por igual desde arriba: apenas importa hacia dónde filme, y las imágenes salen planas. Si asoma el sol, ajuste de nuevo la exposición y el balance de blancos.",
  weed_tints: () =>
    "Las algas se tragan la luz y tiñen la que queda: debajo de ellas, ajuste de nuevo la exposición y el balance de blancos, y busque los claros por donde baja la luz.",
  blue_is_missing: (p, u) =>
    `En esta agua falta azul, más que rojo: a ${depth(p.depth_m, u)} es lo que menos le llega a la cámara. Ningún filtro lo añade. Este frena el verde, para que la cámara pueda subir tanto el azul como el rojo.`,
  automatic_colours: (p) =>
    `Los colores automáticos salen mejor con poca agua en la imagen: acérquese${p.sun_behind ? ", mantenga el sol a su espalda" : ""} y llene el encuadre con el motivo. En la edición, ponga el punto blanco en algo que abajo era gris o blanco: arena clara, una tablilla, una botella.`,
};
