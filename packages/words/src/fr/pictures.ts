import type { Estimate } from "@sunfathom/planner";
import type { ChartUnderWaterTexts, LightWithDepthTexts, PictureTexts } from "../picture-texts.js";
import type { TextUnits } from "../problems/texts.js";
import { colourStrip } from "./colour-strip.js";
import { cuttingTemplate } from "./cutting-template.js";
import { exposureBudget } from "./exposure-budget.js";
import { filterMap } from "./filter-map.js";
import { theFilter } from "./filter-name.js";
import { between, depth, depthNumber, percent, shown, strength } from "./format.js";
import { grade } from "./grade.js";
import { mixedLightMap } from "./mixed-light-map.js";
import { redInPost } from "./red-in-post.js";
import { slate } from "./slate.js";

/** Aussi précis qu’il est utile. */
const percentOf = (value: number): string =>
  value < 0.1 ? `moins de ${percent(0.1, 1)}` : percent(value, value < 1 ? 1 : 0);

const at = ({ low, likely, high }: Estimate, u?: TextUnits): string =>
  depthNumber(low, u) === depthNumber(high, u)
    ? depth(likely, u)
    : `${depth(likely, u)} (de ${depthNumber(low, u)} à ${depth(high, u)})`;

const lightWithDepth: LightWithDepthTexts = {
  headline: ({ red_to_tenth_depth_m }, u) =>
    `À ${depth(red_to_tenth_depth_m, u)}, il reste un dixième de la lumière rouge`,
  left: "Lumière restante selon la profondeur",
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  at_percent: ({ percent: value }) => percent(value),
  no_daylight:
    "Cette plongée se fait sans lumière du jour : voici ce que l’eau prend à la lumière venue d’en haut.",
  names: { red: "rouge", green: "vert", blue: "bleu", eye: "œil" },
  left_at: ({ depth_m }, u) => `Reste à ${depth(depth_m, u)}`,
  percent: ({ percent: value }) => percentOf(value),
  tenth: (estimate, u) => `Rouge réduit au dixième : ${at(estimate, u)}`,
  hundredth: (estimate, u) => `Rouge réduit au centième : ${at(estimate, u)}`,
  dive: ({ min_depth_m, max_depth_m }, u) => `Vous filmez ${between(min_depth_m, max_depth_m, u)}`,
  shaded: `En grisé : 8 fois sur 10, la courbe y passe. ${percent(100)}, c’est la lumière juste sous la surface.`,
  bands: "Le rouge est la lumière de 600 à 700 nm, le vert de 500 à 600, le bleu de 400 à 500.",
  description: ({ max_depth_m, left_at_max_percent: left, end_m, ...red }, u) =>
    [
      `Courbes de la lumière qui reste de la surface à ${depth(end_m, u)}, une pour le rouge, le vert, le bleu et l’œil.`,
      `Le rouge tombe au dixième à ${at(red.red_to_tenth_depth_m, u)}, et au centième à ${at(red.red_to_hundredth_depth_m, u)}.`,
      `À ${depth(max_depth_m, u)}, il reste ${percentOf(left.red.likely)} du rouge, ${percentOf(left.green.likely)} du vert, ${percentOf(left.blue.likely)} du bleu, et ${percentOf(left.eye.likely)} de ce que voit l’œil.`,
    ].join(" "),
};

const finishes = { basic_edit: "Retouché : curseurs", matched: "Calé sur une charte" };
const finished = { basic_edit: "après retouche", matched: "après calage sur une charte" };

const chartUnderWater: ChartUnderWaterTexts = {
  headline: ({ filter, is_advised, depth_m }, u) =>
    is_advised
      ? `Ce que change ${theFilter(filter)} à ${depth(depth_m, u)}`
      : `À ${depth(depth_m, u)}, filmez sans filtre`,
  truth: "La charte à la lumière du jour",
  reading:
    "24 couleurs par teinte, les gris au centre. Dans les roues du dessous, chaque case montre ce que la caméra fait d’une couleur, avec la couleur vraie sur son bord intérieur : moins vous voyez ce bord, mieux c’est.",
  daylight: "Réglage lumière du jour",
  balanced: "Balance des blancs faite",
  finished: ({ finish }) => finishes[finish],
  without: "Sans filtre",
  filtered: ({ filter, is_advised }) => `Avec ${theFilter(filter)}${is_advised ? "" : ", non conseillé ici"}`,
  off: ({ delta_e00 }) => `erreur ${strength(delta_e00)}, ${shown(delta_e00)}`,
  screen:
    "Les erreurs sont des CIEDE2000 moyens, avec le bruit, que les cases ne montrent pas ; nous tenons environ 1 pour le plus petit écart visible. Les couleurs qu’un écran ne peut pas montrer sont ramenées à ce qu’il peut afficher.",
  description: ({ depth_m, filter, without, filtered, finish }, u) =>
    [
      `Une charte de 24 couleurs à ${depth(depth_m, u)}, telle que la caméra l’enregistre, sans filtre et avec ${theFilter(filter)}.`,
      `Erreur de couleur sans filtre : ${shown(without.daylight.delta_e00)} au réglage lumière du jour, ${shown(without.balanced.delta_e00)} une fois la balance des blancs faite, ${shown(without.finished.delta_e00)} ${finished[finish]}.`,
      `Avec le filtre : ${shown(filtered.daylight.delta_e00)}, ${shown(filtered.balanced.delta_e00)} et ${shown(filtered.finished.delta_e00)}.`,
    ].join(" "),
};

export const pictures: PictureTexts = {
  caution:
    "Il s’agit ici de lumière et de couleur. Ce sont votre formation et les règles locales qui décident de la plongée.",
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
