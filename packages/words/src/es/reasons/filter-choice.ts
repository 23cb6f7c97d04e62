import type { FilterChoiceReasons, Finish } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { dialShutter, settings } from "../dial.js";
import { choiceOf } from "../filter-name.js";
import { between, densityOf, depth, neutral, stops, strength } from "../format.js";
import { filterMainReasons } from "./filter-main.js";

/** Con qué se juzga la imagen. */
const judgedBy: Record<Finish, string> = {
  in_camera: "Aquí se juzga la imagen tal como sale de la cámara, con su balance de blancos y sin edición.",
  basic_edit:
    "Aquí se juzga la imagen tras una edición básica: balance, exposición, punto negro y saturación, con un control para cada uno.",
  matched:
    "Aquí se juzga la imagen tras una corrección de color ajustada con una carta de color filmada en la misma luz.",
};

const otherwise: Record<Finish, string> = {
  in_camera: "Tal como sale de la cámara",
  basic_edit: "Con una edición básica después",
  matched: "Con una corrección de color ajustada con carta",
};

/** Por qué se guía la exposición, y cómo queda con estos ajustes. */
const carded: Record<FilterChoiceReasons["light_to_spare"]["metering"], { what: string; right: string }> = {
  white_card: { what: "una tarjeta blanca", right: "llena la escala" },
  grey_card: { what: "una tarjeta gris", right: "queda bien expuesta" },
  picture: { what: "la imagen entera", right: "queda bien expuesta" },
};

/** Razones sobre la elección de un filtro. */
export const filterChoiceReasons: Texts<FilterChoiceReasons, string> = {
  ...filterMainReasons,
  finish_judged: (p) => judgedBy[p.finish],
  finish_turns_choice: (p) =>
    p.error > p.advised_error
      ? `${otherwise[p.finish]}, vaya sin filtro: el aconsejado mejora los colores demasiado poco para montarlo.`
      : `${otherwise[p.finish]}, sería mejor ${choiceOf(p.filter)}: deja un error de color ${strength(p.error)}, menor que el de lo aconsejado.`,
  denser_gains_nothing_below: (p, u) =>
    `Hasta ${depth(p.depth_m, u)} la mejor densidad va subiendo, hasta ${densityOf(p.density)}. Más abajo es mejor un filtro menos denso, o ninguno, porque se acaba la luz o el propio rojo.`,
  filter_brings_balance_into_reach: (p, u) =>
    `Sin filtro, la cámara no consigue hacer un balance de blancos a partir de ${depth(p.depth_m, u)} (a ${depth(p.deepest_m, u)} se queda corta en ${stops(p.residual_stops)}). El filtro frena el verde y el azul: así se puede exponer para el rojo${p.reach_from_m !== undefined && p.reach_to_m !== undefined ? `, y la cámara consigue un balance de blancos ${between(p.reach_from_m, p.reach_to_m, u)}` : ", y el balance queda más cerca"}.`,
  balance_out_of_reach: (p, u) =>
    `A partir de ${depth(p.depth_m, u)} la cámara no consigue hacer un balance de blancos (a ${depth(p.deepest_m, u)} se queda corta en ${stops(p.residual_stops)}). En la corrección de color, quite la dominante que quede.`,
  balance_in_reach_without: () => "La cámara puede hacer el balance de blancos sin filtro.",
  light_to_spare: (p, u) =>
    `Sobra luz: a ${depth(p.depth_m, u)} sin filtro, ${carded[p.metering].what} ${carded[p.metering].right} con ${settings(p)}.`,
  light_is_too_much: (p, u) =>
    `A ${depth(p.depth_m, u)} sin filtro, ${carded[p.metering].what} recibe ${stops(p.excess_stops)} de luz de más con ${settings(p)}, la exposición mínima dentro de los límites que usted ha fijado. Amplíelos a un diafragma más cerrado, o use ${neutral(p.density)}.`,
  colour_filter_as_neutral: () =>
    "Para que no se queme la imagen, un filtro de color solo haría el trabajo de un filtro ND. No es razón para montar uno.",
  light_has_run_out: (p, u) =>
    p.short_stops > 0.05
      ? `Está demasiado oscuro: a ${depth(p.depth_m, u)}, ${carded[p.metering].what} recibe ${stops(p.short_stops)} de luz de menos con ${settings(p)} incluso sin filtro, y cualquier filtro cuesta más luz.`
      : `La luz va justa: a ${depth(p.depth_m, u)} sin filtro, ${carded[p.metering].what} ${carded[p.metering].right} solo con ${settings(p)}. Cada paso que cueste un filtro se paga con ruido.`,
  light_holds_density: (p, u) =>
    `La luz se acaba antes que el color. Con más luz, sería mejor ${choiceOf(p.wanted)}. A ${depth(p.depth_m, u)} la imagen ya necesita ${settings(p)} y ${dialShutter(p.shutter_s)}, y un filtro más denso se paga con ruido. Con menos fotogramas por segundo o un objetivo más luminoso podría montar ese filtro.`,
  densest_tried: (p) =>
    `El filtro más denso que se prueba aquí tiene una densidad de ${densityOf(p.density)}, y a estas profundidades es el mejor: uno aún más denso quizá diera mejor resultado. Apenas se fabrican tan densos; de los más débiles, el más denso que consiga es el que más se acerca.`,
  filter_shape_assumed: () =>
    "Ninguna norma fija la curva de un filtro. Las formas de aquí son suposiciones; cuánto cambiaría la imagen otro filtro del mismo nombre forma parte de la incertidumbre.",
  filter_trade_rule_blue: (_, u) =>
    `Práctica habitual: filtro rojo en agua azul, a partir de unos ${depth(3, u)}.`,
  filter_trade_rule_green: () => "Práctica habitual: filtro magenta en agua verde.",
};
