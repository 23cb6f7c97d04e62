import type { Estimate } from "@sunfathom/planner";
import type { ChartUnderWaterTexts, LightWithDepthTexts, PictureTexts } from "../picture-texts.js";
import { theFilter } from "./filter-name.js";
import { depth, depthNumber, percent, shown, strength, unit } from "./format.js";
import { redInPost } from "./red-in-post.js";

/** Tan preciso como le sirve a alguien. */
const percentOf = (value: number): string =>
  value < 0.1 ? `menos del ${percent(0.1, 1)}` : percent(value, value < 1 ? 1 : 0);

const at = ({ low, likely, high }: Estimate): string =>
  depthNumber(low) === depthNumber(high)
    ? depth(likely)
    : `${depth(likely)} (de ${depthNumber(low)} a ${depth(high)})`;

const lightWithDepth: LightWithDepthTexts = {
  headline: ({ red_to_tenth_depth_m }) =>
    `A ${depth(red_to_tenth_depth_m)} queda una décima parte de la luz roja`,
  left: "Luz que queda, según la profundidad",
  at_depth: ({ depth_m }) => unit(shown(depth_m), "m"),
  at_percent: ({ percent: value }) => percent(value),
  no_daylight: "En esta inmersión no hay luz del día: así quita el agua la luz que llega de arriba.",
  names: { red: "rojo", green: "verde", blue: "azul", eye: "el ojo" },
  left_at: ({ depth_m }) => `Queda a ${depth(depth_m)}`,
  percent: ({ percent: value }) => percentOf(value),
  tenth: (estimate) => `El rojo, a una décima: ${at(estimate)}`,
  hundredth: (estimate) => `El rojo, a una centésima: ${at(estimate)}`,
  dive: ({ min_depth_m, max_depth_m }) =>
    depthNumber(min_depth_m) === depthNumber(max_depth_m)
      ? `Filma a ${depth(max_depth_m)}`
      : `Filma de ${depthNumber(min_depth_m)} a ${depth(max_depth_m)}`,
  shaded: `Sombreado: 8 de cada 10 veces, la curva pasa por ahí. El ${percent(100)} es la luz justo bajo la superficie.`,
  bands: "Rojo es la luz de 600 a 700 nm; verde, de 500 a 600; azul, de 400 a 500.",
  description: ({ max_depth_m, left_at_max_percent: left, end_m, ...red }) =>
    [
      `Curvas de la luz que queda desde la superficie hasta ${unit(shown(end_m), "m")}, una para el rojo, una para el verde, una para el azul y una para el ojo.`,
      `El rojo baja a una décima parte a ${at(red.red_to_tenth_depth_m)}, y a una centésima a ${at(red.red_to_hundredth_depth_m)}.`,
      `A ${depth(max_depth_m)} queda del rojo ${percentOf(left.red.likely)}, del verde ${percentOf(left.green.likely)}, del azul ${percentOf(left.blue.likely)} y de lo que ve el ojo ${percentOf(left.eye.likely)}.`,
    ].join(" "),
};

const finishes = { basic_edit: "Editado: ajustes básicos", matched: "Igualado con una carta" };
const finished = { basic_edit: "tras editar", matched: "al igualar con una carta" };

const chartUnderWater: ChartUnderWaterTexts = {
  headline: ({ filter, is_advised, depth_m }) =>
    is_advised
      ? `Qué hace ${theFilter(filter)} a ${depth(depth_m)}`
      : `A ${depth(depth_m)}, filme sin filtro`,
  truth: "La carta a la luz del día",
  reading:
    "24 colores por tono, con los grises en el centro. En las ruedas de abajo, cada campo muestra lo que la cámara hace de un color, con el color verdadero en su borde interior: cuanto menos vea ese borde, mejor.",
  daylight: "Ajuste de luz de día",
  balanced: "Balance de blancos hecho",
  finished: ({ finish }) => finishes[finish],
  without: "Sin filtro",
  filtered: ({ filter, is_advised }) => `Con ${theFilter(filter)}${is_advised ? "" : ", aquí no aconsejado"}`,
  off: ({ delta_e00 }) => `error ${strength(delta_e00)}, ${shown(delta_e00)}`,
  screen:
    "Los errores son CIEDE2000 medios, con el ruido, que los campos no muestran: alrededor de 1 es lo mínimo que se ve. Los colores que una pantalla no puede mostrar se recortan a lo que puede.",
  description: ({ depth_m, filter, without, filtered, finish }) =>
    [
      `Una carta de 24 colores a ${depth(depth_m)}, tal como la registra la cámara, sin filtro y con ${theFilter(filter)}.`,
      `Error de color sin filtro: ${shown(without.daylight.delta_e00)} con el ajuste de luz de día, ${shown(without.balanced.delta_e00)} con el balance de blancos hecho, ${shown(without.finished.delta_e00)} ${finished[finish]}.`,
      `Con el filtro: ${shown(filtered.daylight.delta_e00)}, ${shown(filtered.balanced.delta_e00)} y ${shown(filtered.finished.delta_e00)}.`,
    ].join(" "),
};

export const pictures: PictureTexts = {
  caution: "Esto trata de luz y color. Sobre la inmersión deciden su formación y las normas locales.",
  chart_under_water: chartUnderWater,
  light_with_depth: lightWithDepth,
  red_in_post: redInPost,
};
