import type { Estimate } from "@sunfathom/planner";
import type { ChartUnderWaterTexts, LightWithDepthTexts, PictureTexts } from "../picture-texts.js";
import type { TextUnits } from "../problems/texts.js";
import { colourStrip } from "./colour-strip.js";
import { cuttingTemplate } from "./cutting-template.js";
import { exposureBudget } from "./exposure-budget.js";
import { filterMap } from "./filter-map.js";
import { theFilter } from "./filter-name.js";
import { depth, depthNumber, percent, shown, strength } from "./format.js";
import { grade } from "./grade.js";
import { mixedLightMap } from "./mixed-light-map.js";
import { redInPost } from "./red-in-post.js";
import { slate } from "./slate.js";

/** Tan preciso como le sirve a alguien. */
const percentOf = (value: number): string =>
  value < 0.1 ? `menos del ${percent(0.1, 1)}` : percent(value, value < 1 ? 1 : 0);

const at = ({ low, likely, high }: Estimate, u?: TextUnits): string =>
  depthNumber(low, u) === depthNumber(high, u)
    ? depth(likely, u)
    : `${depth(likely, u)} (de ${depthNumber(low, u)} a ${depth(high, u)})`;

const lightWithDepth: LightWithDepthTexts = {
  headline: ({ red_to_tenth_depth_m }, u) =>
    `A ${depth(red_to_tenth_depth_m, u)} queda una décima parte de la luz roja`,
  left: "Luz que queda, según la profundidad",
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  at_percent: ({ percent: value }) => percent(value),
  no_daylight: "En esta inmersión no hay luz del día: así quita el agua la luz que llega de arriba.",
  names: { red: "rojo", green: "verde", blue: "azul", eye: "el ojo" },
  left_at: ({ depth_m }, u) => `Queda a ${depth(depth_m, u)}`,
  percent: ({ percent: value }) => percentOf(value),
  tenth: (estimate, u) => `El rojo, a una décima: ${at(estimate, u)}`,
  hundredth: (estimate, u) => `El rojo, a una centésima: ${at(estimate, u)}`,
  dive: ({ min_depth_m, max_depth_m }, u) =>
    depthNumber(min_depth_m, u) === depthNumber(max_depth_m, u)
      ? `Usted filma a ${depth(max_depth_m, u)}`
      : `Usted filma de ${depthNumber(min_depth_m, u)} a ${depth(max_depth_m, u)}`,
  shaded: `Sombreado: 8 de cada 10 veces, la curva pasa por ahí. El ${percent(100)} es la luz justo bajo la superficie.`,
  bands: "Rojo es la luz de 600 a 700 nm; verde, de 500 a 600; azul, de 400 a 500.",
  description: ({ max_depth_m, left_at_max_percent: left, end_m, ...red }, u) =>
    [
      `Curvas de la luz que queda desde la superficie hasta ${depth(end_m, u)}, una para el rojo, una para el verde, una para el azul y una para el ojo.`,
      `El rojo baja a una décima parte a ${at(red.red_to_tenth_depth_m, u)}, y a una centésima a ${at(red.red_to_hundredth_depth_m, u)}.`,
      `A ${depth(max_depth_m, u)} queda del rojo ${percentOf(left.red.likely)}, del verde ${percentOf(left.green.likely)}, del azul ${percentOf(left.blue.likely)} y de lo que ve el ojo ${percentOf(left.eye.likely)}.`,
    ].join(" "),
};

const finishes = { basic_edit: "Editado: ajustes básicos", matched: "Igualado con una carta" };
const finished = { basic_edit: "tras editar", matched: "al igualar con una carta" };

const chartUnderWater: ChartUnderWaterTexts = {
  headline: ({ filter, is_advised, depth_m }, u) =>
    is_advised
      ? `Qué hace ${theFilter(filter)} a ${depth(depth_m, u)}`
      : `A ${depth(depth_m, u)}, filme sin filtro`,
  truth: "La carta a la luz del día",
  reading:
    "24 colores ordenados por tono, con los grises en el centro. En las ruedas de abajo, cada campo muestra lo que la cámara hace de un color, con el color verdadero en su borde interior: cuanto menos vea ese borde, mejor.",
  daylight: "Ajuste de luz de día",
  balanced: "Balance de blancos hecho",
  finished: ({ finish }) => finishes[finish],
  without: "Sin filtro",
  filtered: ({ filter, is_advised }) => `Con ${theFilter(filter)}${is_advised ? "" : ", aquí no aconsejado"}`,
  off: ({ delta_e00 }) => `error ${strength(delta_e00)}, ${shown(delta_e00)}`,
  screen:
    "Los errores son CIEDE2000 medios, con el ruido, que los campos no muestran; tomamos alrededor de 1 como lo mínimo que se ve. Los colores que una pantalla no puede mostrar se recortan a lo que puede.",
  description: ({ depth_m, filter, without, filtered, finish }, u) =>
    [
      `Una carta de 24 colores a ${depth(depth_m, u)}, tal como la registra la cámara, sin filtro y con ${theFilter(filter)}.`,
      `Error de color sin filtro: ${shown(without.daylight.delta_e00)} con el ajuste de luz de día, ${shown(without.balanced.delta_e00)} con el balance de blancos hecho, ${shown(without.finished.delta_e00)} ${finished[finish]}.`,
      `Con el filtro: ${shown(filtered.daylight.delta_e00)}, ${shown(filtered.balanced.delta_e00)} y ${shown(filtered.finished.delta_e00)}.`,
    ].join(" "),
};

export const pictures: PictureTexts = {
  caution: "Esto trata de luz y color. Sobre la inmersión deciden su formación y las normas locales.",
  chart_under_water: chartUnderWater,
  colour_strip: colourStrip,
  exposure_budget: exposureBudget,
  filter_map: filterMap,
  light_with_depth: lightWithDepth,
  mixed_light_map: mixedLightMap,
  red_in_post: redInPost,
  slate,
  cutting_template: cuttingTemplate,
  grade,
};
