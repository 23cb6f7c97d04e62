import type { Estimate } from "@sunfathom/planner";
import type { LightWithDepthTexts, PictureTexts } from "../picture-texts.js";
import { between, depth, depthNumber, percent, shown, unit } from "./format.js";

/** Aussi précis qu’il est utile. */
const percentOf = (value: number): string =>
  value < 0.1 ? `moins de ${percent(0.1, 1)}` : percent(value, value < 1 ? 1 : 0);

const at = ({ low, likely, high }: Estimate): string =>
  depthNumber(low) === depthNumber(high)
    ? depth(likely)
    : `${depth(likely)} (de ${depthNumber(low)} à ${depth(high)})`;

const lightWithDepth: LightWithDepthTexts = {
  headline: ({ red_to_tenth_depth_m }) =>
    `À ${depth(red_to_tenth_depth_m)}, il reste un dixième de la lumière rouge`,
  left: "Lumière restante selon la profondeur",
  at_depth: ({ depth_m }) => unit(shown(depth_m), "m"),
  at_percent: ({ percent: value }) => percent(value),
  no_daylight:
    "Cette plongée n’a pas de lumière du jour : voici comment l’eau prend la lumière venue d’en haut.",
  names: { red: "rouge", green: "vert", blue: "bleu", eye: "œil" },
  left_at: ({ depth_m }) => `Reste à ${depth(depth_m)}`,
  percent: ({ percent: value }) => percentOf(value),
  tenth: (estimate) => `Rouge réduit au dixième : ${at(estimate)}`,
  hundredth: (estimate) => `Rouge réduit au centième : ${at(estimate)}`,
  dive: ({ min_depth_m, max_depth_m }) => `Vous filmez ${between(min_depth_m, max_depth_m)}`,
  shaded: `En grisé : 8 fois sur 10, la courbe y passe. ${percent(100)}, c’est la lumière juste sous la surface.`,
  bands: "Le rouge est la lumière de 600 à 700 nm, le vert de 500 à 600, le bleu de 400 à 500.",
  description: ({ max_depth_m, left_at_max_percent: left, end_m, ...red }) =>
    [
      `Courbes de la lumière qui reste de la surface à ${unit(shown(end_m), "m")}, une pour le rouge, le vert, le bleu et l’œil.`,
      `Le rouge tombe au dixième à ${at(red.red_to_tenth_depth_m)}, et au centième à ${at(red.red_to_hundredth_depth_m)}.`,
      `À ${depth(max_depth_m)}, il reste ${percentOf(left.red.likely)} du rouge, ${percentOf(left.green.likely)} du vert, ${percentOf(left.blue.likely)} du bleu, et ${percentOf(left.eye.likely)} de ce que voit l’œil.`,
    ].join(" "),
};

export const pictures: PictureTexts = {
  caution:
    "Il s’agit ici de lumière et de couleur. Ce sont votre formation et les règles locales qui décident de la plongée.",
  light_with_depth: lightWithDepth,
};
