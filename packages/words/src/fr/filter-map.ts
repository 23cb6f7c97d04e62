import type { FilterMapTexts } from "../picture-texts.js";
import { filterName, kindName } from "./filter-name.js";
import { between, capital, densityOf, depth, shown } from "./format.js";

export const filterMap: FilterMapTexts = {
  headline: ({ filter, is_advised, min_depth_m, max_depth_m }, u) =>
    is_advised
      ? `${capital(between(min_depth_m, max_depth_m, u))}, le mieux est ${filterName(filter)}`
      : `${capital(between(min_depth_m, max_depth_m, u))}, aucun filtre n’en vaut la peine`,
  reading:
    "Chaque nombre est une erreur de couleur : de combien les couleurs s’écartent à cette profondeur, derrière un filtre de cette densité. Nous tenons environ 1 pour le plus petit écart visible. Plus la case est sombre, plus l’erreur est grande.",
  across: ({ kind }) => `Densité du ${kind === "none" ? "filtre" : kindName(kind)} (0,3 coûte environ un IL)`,
  none: "sans",
  at_density: ({ density }) => densityOf(density),
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  error: ({ delta_e00 }) => shown(delta_e00),
  band: ({ from, to }) =>
    from === to
      ? `Encadré : conseillé, densité ${densityOf(from)}`
      : `Encadré : conseillé ; entre les densités ${densityOf(from)} et ${densityOf(to)}, vous ne verrez pas de différence`,
  no_band: "Aucune densité n’est encadrée : aucune n’est conseillée ici.",
  dive: ({ min_depth_m, max_depth_m }, u) => `Vous filmez ${between(min_depth_m, max_depth_m, u)}`,
  description: ({ kind, densities, depths_m, delta_e00, filter, is_advised, max_depth_m }, u) => {
    const deepest = delta_e00[depths_m.length - 1] ?? [];
    const least = Math.min(...deepest);
    return [
      `Erreurs de couleur derrière un ${kind === "none" ? "filtre" : kindName(kind)} de densité 0 à ${densityOf(densities[densities.length - 1] ?? 0)}, depuis le voisinage de la surface jusqu’à ${depth(max_depth_m, u)}.`,
      `À ${depth(max_depth_m, u)}, l’erreur est de ${shown(deepest[0] ?? 0)} sans filtre et de ${shown(least)} au mieux, à la densité ${densityOf(densities[deepest.indexOf(least)] ?? 0)}.`,
      is_advised
        ? `Pour toutes les profondeurs filmées, le mieux est ${filterName(filter)}.`
        : "Aucun filtre n’est conseillé.",
    ].join(" ");
  },
};
