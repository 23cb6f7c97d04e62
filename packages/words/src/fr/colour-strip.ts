import type { ColourStripTexts } from "../picture-texts.js";
import { theFilter } from "./filter-name.js";
import { between, depth, shown, strength } from "./format.js";

export const colourStrip: ColourStripTexts = {
  headline: ({ max_depth_m }, u) =>
    `Comment les couleurs s’éteignent de la surface à ${depth(max_depth_m, u)}`,
  names: { grey: "gris", red: "rouge", skin: "peau" },
  reading:
    "Chaque bande va de la surface à votre plus grande profondeur filmée : gris, rouge et peau, tels que la caméra les enregistre, l’exposition refaite à chaque profondeur. Le bord du haut les montre à la lumière du jour.",
  daylight: "Réglage lumière du jour",
  balanced: "Balance des blancs faite",
  filtered: ({ filter, is_advised }) =>
    `Balance des blancs faite, avec ${theFilter(filter)}${is_advised ? "" : ", non conseillé ici"}`,
  truth: "vrai",
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  off: ({ delta_e00 }) => `Erreur ${strength(delta_e00)}, ${shown(delta_e00)}`,
  dive: ({ min_depth_m, max_depth_m }, u) => `Vous filmez ${between(min_depth_m, max_depth_m, u)}`,
  screen:
    "Les erreurs sont le CIEDE2000 moyen des trois couleurs à la plus grande profondeur, sans le bruit ; nous tenons environ 1 pour le plus petit écart visible. Les couleurs qu’un écran ne peut pas montrer sont ramenées à ce qu’il peut afficher.",
  description: ({ max_depth_m, filter, daylight, balanced, filtered }, u) =>
    [
      `Trois bandes de gris, de rouge et de peau, de la surface à ${depth(max_depth_m, u)}, telles qu’une caméra les enregistre.`,
      `À ${depth(max_depth_m, u)}, l’erreur de couleur est de ${shown(daylight.delta_e00)} au réglage lumière du jour, de ${shown(balanced.delta_e00)} une fois la balance des blancs faite, et de ${shown(filtered.delta_e00)} avec ${theFilter(filter)} en plus.`,
    ].join(" "),
};
