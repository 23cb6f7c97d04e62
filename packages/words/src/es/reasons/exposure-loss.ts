import type { ExposureLossReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { dialFNumber, settings } from "../dial.js";
import { depth, distance, neutral, percent, shown, stops } from "../format.js";

/** Razones sobre la pérdida de luz. */
export const exposureLossReasons: Texts<ExposureLossReasons, string> = {
  too_bright: (p, u) =>
    `A ${depth(p.depth_m, u)} hay ${stops(p.excess_stops)} de luz de más incluso con ${settings(p)}, la exposición mínima dentro de los límites que usted ha fijado. Use ${neutral(p.density)}; subir el ISO lo empeoraría.`,
  aperture_can_close: (p) =>
    `También podría cerrar el diafragma a f/${dialFNumber(p.f_number)}: con los ajustes indicados está más abierto de lo necesario.`,
  too_dark: (p, u) =>
    `A ${depth(p.depth_m, u)} hay ${stops(p.shortfall_stops)} de luz de menos incluso con ${settings(p)}. Para tener más luz hace falta una inmersión con el sol más alto, menos profundidad, un foco de vídeo o un tiempo de exposición más largo.`,
  exposure_fits: (p, u) =>
    `A ${depth(p.depth_m, u)} la medición del motivo da EV ${shown(p.ev, 1)} a ISO 100, es decir, ${settings(p)}.`,
  levels_apart: (p, u) =>
    p.stops > 0
      ? `A ${depth(p.depth_m, u)}, un fotómetro que promedia la imagen da ${stops(p.stops)} menos de exposición de lo que necesita el motivo, porque el agua y el fondo son más claros. Exponga para el motivo, o siga al fotómetro si le importa más el azul del fondo.`
      : `A ${depth(p.depth_m, u)}, un fotómetro que promedia la imagen da ${stops(-p.stops)} más de exposición de lo que necesita el motivo, porque el agua y el fondo son más oscuros. Exponga para el motivo, o se quemará.`,
  auto_exposes_picture: (p, u) =>
    p.stops > 0
      ? `La exposición automática mide la imagen entera. A ${depth(p.depth_m, u)} eso deja el motivo ${stops(p.stops)} demasiado oscuro, porque el agua y el fondo son más claros. Ponga la compensación de exposición en +${stops(p.stops)}, o bloquee la exposición en el motivo.`
      : `La exposición automática mide la imagen entera. A ${depth(p.depth_m, u)} eso deja el motivo ${stops(-p.stops)} demasiado claro, porque el agua y el fondo son más oscuros. Ponga la compensación de exposición en -${stops(-p.stops)}, o bloquee la exposición en el motivo.`,
  filter_makes_it_darker: (p) =>
    `De la luz que falta, el filtro del objetivo cuesta ${stops(p.stops)}: quítelo.`,
  any_filter_would_worsen: () => "Un filtro en el objetivo costaría más luz y lo empeoraría.",
  port_takes: (p) =>
    `El puerto cuesta ${stops(p.stops)}, sea cual sea su forma: la luz se abre al pasar del agua al aire, y la ventana refleja un poco. Un fotómetro dentro de la carcasa ya lo mide.`,
  water_takes_most: (p, u) =>
    `Entre la superficie y el sensor a ${depth(p.depth_m, u)}, la pérdida es de ${stops(p.total_stops)}; el agua de encima se lleva ${stops(p.depth_stops)}.`,
  haze_is_the_limit: (p, u) =>
    `A través de ${distance(p.distance_m, u)} de esta agua queda un ${percent(p.contrast_percent)} del contraste: aquí el límite es la turbidez, no el color. Acérquese antes de cambiar ninguna otra cosa.`,
};
