import type { WhiteBalanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { castOf, depth, distance, howOften, kelvin, shown, stops, strength } from "../format.js";

/** Ce qu’une charte laisserait à la place : la même chose, là où l’appareil est à sa limite. */
const onCard = (p: { cast: number; card_cast: number }): string => {
  if (shown(p.cast, 1) === shown(p.card_cast, 1))
    return "Une charte n’y ferait rien : la balance des blancs est à sa limite";
  if (p.card_cast < 1) return "Une charte à cet endroit l’enlèverait";
  const is = strength(p.cast) === strength(p.card_cast) ? "resterait" : "serait";
  return `Avec une charte à cet endroit, elle ${is} ${strength(p.card_cast)}`;
};

/** Ce qu’il y a à dire de la balance des blancs. */
export const whiteBalanceReasons: Texts<WhiteBalanceReasons, string> = {
  kelvin_leaves_the_water: (p, u) =>
    `Réglé sur ${kelvin(p.cct_K)}, la valeur des phares vidéo, l’appareil laisserait ${castOf(p.left)}, due à ${distance(p.path_m, u)} d’eau entre le phare, le sujet et l’appareil. Une charte à la distance de travail l’enlève.`,
  balance_again: (p, u) =>
    `La lumière change avec la profondeur. En descendant, ${castOf(p.tolerance)} s’installe ${howOften(p.times)}, ${p.times === 1 ? "" : "la première fois "}à ${depth(p.first_m, u)} : refaites ${p.times === 1 ? "alors" : "chaque fois"} la balance des blancs.`,
  one_balance_serves: () => "Une seule balance des blancs suffit partout : une nouvelle apporterait peu.",
  kelvin_balance_leaves: (p, u) =>
    `Réglé sur ${kelvin(p.cct_K)}, l’appareil laisse ${castOf(p.cast)} sur un gris à ${depth(p.depth_m, u)}. ${onCard(p)}.`,
  auto_balance_leaves: (p, u) =>
    `La balance des blancs automatique ramène toute l’image à un gris moyen, eau comprise, autant qu’elle le peut. À ${depth(p.depth_m, u)}, cela laisse ${castOf(p.cast)} sur un gris. ${onCard(p)}.`,
  balance_in_reach: () =>
    "La balance des blancs de l’appareil arrive à rendre une charte neutre à toutes ces profondeurs.",
  balance_falls_short: (p, u) =>
    `À ${depth(p.depth_m, u)}, la balance des blancs de l’appareil ne rattrape pas tout l’écart entre les canaux : il manque ${stops(p.short_stops)}. Cela laisse ${castOf(p.cast)} sur un gris : corrigez-la à la retouche.`,
};
