import type { FilterMainReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { filterName, kindName } from "../filter-name.js";
import {
  between,
  capital,
  densityOf,
  depth,
  distance,
  errorFall,
  hardlyAny,
  kelvin,
  shareOf,
  strength,
} from "../format.js";

/** Ce qui décide du choix d’un filtre. */
export const filterMainReasons: Texts<FilterMainReasons, string> = {
  filter_earns: (p, u) =>
    `${capital(between(p.min_m, p.max_m, u))}, ${filterName(p.filter)} ${errorFall(p.without_e, p.with_e)}.`,
  no_filter_earns: (p) =>
    p.best_change < 0
      ? `Aucun filtre n’améliore assez les couleurs. Le meilleur, ${filterName(p.best)}, apporterait trop peu pour qu’on le monte.`
      : `Aucun filtre n’améliore les couleurs. Même le meilleur, ${filterName(p.best)}, les rendrait pires.`,
  no_filter_owned: () =>
    "Votre matériel ne compte aucun filtre d’objectif : aucun n’est donc conseillé. Omettez `kit` pour savoir lequel conviendrait.",
  subject_out_of_sight: (p, u) =>
    `Le voile cache le sujet : il est à ${distance(p.distance_m, u)}, et l’on voit ici à ${distance(p.visibility_m, u)} environ. Un filtre ne changerait que la couleur du voile. Approchez-vous d’abord.`,
  change_at_depth: (p, u) =>
    `Le filtre améliore les couleurs ${between(p.from_m, p.to_m, u)}. Mettez-le en entrant dans cette zone, retirez-le en la quittant, et refaites chaque fois la balance des blancs.`,
  serves_part_of_range: (p, u) =>
    `Il améliore les couleurs ${between(p.from_m, p.to_m, u)} et les dégrade en dehors. Vous ne pouvez pas en changer sous l’eau, mais sur l’ensemble, il en vaut quand même la peine.`,
  part_would_gain: (p, u) =>
    `Sur l’ensemble, aucun filtre n’en vaut la peine, mais ${between(p.from_m, p.to_m, u)}, ${p.kind === "none" ? "mieux vaudrait s’en passer" : `un ${kindName(p.kind)} en vaudrait la peine`}. Si vous ne filmez que là, posez la question pour cette zone.`,
  only_lamps_would_help: (p) =>
    `Quel que soit le filtre, il reste une erreur de couleur ${strength(p.error)} : les couleurs qui manquent sont trop faibles ici. Amenez des phares vidéo près du sujet, restez moins profond, ou acceptez une image aux couleurs de l’eau.`,
  densities_as_good: (p) =>
    `Entre les densités ${densityOf(p.from_density)} et ${densityOf(p.to_density)}, vous ne verrez pas de différence. C’est la plus faible qui coûte le moins de lumière.`,
  no_red_to_gain: (p, u) =>
    `À partir de ${depth(p.depth_m, u)}, il ne reste presque plus de rouge : même avec ${filterName(p.filter)}, moins de 1\u00a0% du signal du canal rouge est de la lumière rouge. Un filtre n’y apporte rien.`,
  filter_adds_no_red: (p, u) =>
    `Un filtre n’ajoute pas de lumière rouge. À ${depth(p.depth_m, u)}, ${shareOf(p.with_share * 100)} de ce que l’appareil enregistre comme rouge ${hardlyAny(p.with_share * 100) ? "n’est" : "est"} vraiment de la lumière rouge, et ${shareOf(p.without_share * 100)} sans le filtre : le reste est du vert et du bleu.`,
  lamps_are_the_only_light: (p) =>
    `Vos phares vidéo sont la seule lumière : un filtre sur l’objectif ne ferait qu’en retirer un peu. Faites la balance des blancs sur une charte éclairée par eux${p.lamp ? `, environ ${kelvin(p.lamp.cct_K)} à la sortie du phare` : ""}.`,
  near_tie: (p) =>
    `C’est serré : ${filterName(p.runner_up)} irait presque aussi bien, et peut-être même mieux.`,
};
