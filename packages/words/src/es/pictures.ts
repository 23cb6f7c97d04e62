import type { Estimate } from "@sunfathom/planner";
import type { LightWithDepthTexts, PictureTexts } from "../picture-texts.js";
import { depth, depthNumber, percent, shown, unit } from "./format.js";

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

export const pictures: PictureTexts = {
  caution: "Esto trata de luz y color. Sobre la inmersión deciden su formación y las normas locales.",
  light_with_depth: lightWithDepth,
};
