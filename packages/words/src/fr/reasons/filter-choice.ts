import type { FilterChoiceReasons, Finish } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { settings, timed } from "../dial.js";
import { filterName } from "../filter-name.js";
import { between, densityOf, depth, neutral, stops, strength } from "../format.js";
import { filterMainReasons } from "./filter-main.js";

/** Sur quoi l’image est jugée. */
const judgedBy: Record<Finish, string> = {
  in_camera:
    "L’image est jugée telle qu’elle sort de l’appareil, avec sa balance des blancs et sans retouche.",
  basic_edit:
    "L’image est jugée après une retouche simple : balance, exposition, niveau du noir et saturation, un curseur pour chacun.",
  matched:
    "L’image est jugée après un étalonnage calé sur une charte de couleurs filmée dans la même lumière.",
};

const otherwise: Record<Finish, string> = {
  in_camera: "Pour une image telle qu’elle sort de l’appareil",
  basic_edit: "Avec une retouche simple ensuite",
  matched: "Avec un étalonnage calé sur une charte de couleurs",
};

/** Sur quoi on expose, et ce que cela donne à ces réglages. */
const carded: Record<FilterChoiceReasons["light_to_spare"]["metering"], { what: string; right: string }> = {
  white_card: { what: "une charte blanche", right: "atteint juste le haut de l’échelle" },
  grey_card: { what: "une charte grise", right: "est bien exposée" },
  picture: { what: "l’image entière", right: "est bien exposée" },
};

/** Ce qui plaide pour un filtre ou contre lui. */
export const filterChoiceReasons: Texts<FilterChoiceReasons, string> = {
  ...filterMainReasons,
  finish_judged: (p) => judgedBy[p.finish],
  finish_turns_choice: (p) =>
    p.error > p.advised_error
      ? `${otherwise[p.finish]}, passez-vous de filtre : celui qui est conseillé améliore trop peu les couleurs pour qu’on le monte.`
      : `${otherwise[p.finish]}, le meilleur choix serait ${p.filter.kind === "none" ? "de se passer de filtre" : filterName(p.filter)} : il reste une erreur de couleur ${strength(p.error)}, moins qu’avec le choix conseillé.`,
  denser_gains_nothing_below: (p, u) =>
    `Jusqu’à ${depth(p.depth_m, u)}, la meilleure densité augmente, jusqu’à ${densityOf(p.density)}. Plus bas, un filtre plus faible, ou aucun, fait mieux, parce que la lumière ou le rouge lui-même vient à manquer.`,
  filter_brings_balance_into_reach: (p, u) =>
    `Sans filtre, à partir de ${depth(p.depth_m, u)}, l’appareil n’arrive plus à faire la balance des blancs (il lui manque ${stops(p.residual_stops)} à ${depth(p.deepest_m, u)}). Le filtre retient le vert et le bleu, et vous pouvez exposer pour le rouge${p.reach_from_m !== undefined && p.reach_to_m !== undefined ? ` : l’appareil arrive alors à faire la balance des blancs ${between(p.reach_from_m, p.reach_to_m, u)}` : " : l’appareil s’en approche alors"}.`,
  balance_out_of_reach: (p, u) =>
    `À partir de ${depth(p.depth_m, u)}, l’appareil n’arrive plus à faire la balance des blancs (il lui manque ${stops(p.residual_stops)} à ${depth(p.deepest_m, u)}). Corrigez le reste à l’étalonnage.`,
  balance_in_reach_without: () => "L’appareil arrive à faire la balance des blancs sans filtre.",
  light_to_spare: (p, u) =>
    `Il y a de la lumière à revendre : à ${depth(p.depth_m, u)}, sans filtre, ${carded[p.metering].what} ${carded[p.metering].right} à ${settings(p)}.`,
  light_is_too_much: (p, u) =>
    `À ${depth(p.depth_m, u)}, sans filtre, ${carded[p.metering].what} est trop claire de ${stops(p.excess_stops)} à ${settings(p)}, l’exposition la plus faible que permettent vos limites. Autorisez un diaphragme plus fermé, ou prenez ${neutral(p.density)}.`,
  colour_filter_as_neutral: () =>
    "Contre des blancs brûlés, un filtre de couleur ne ferait pas mieux qu’un filtre ND. Inutile d’en monter un pour cela.",
  light_has_run_out: (p, u) =>
    p.short_stops > 0.05
      ? `Il fait trop sombre : à ${depth(p.depth_m, u)}, ${carded[p.metering].what} reste trop sombre de ${stops(p.short_stops)} à ${settings(p)}, même sans filtre, et tout filtre coûte encore de la lumière.`
      : `La lumière est comptée : à ${depth(p.depth_m, u)}, sans filtre, ${carded[p.metering].what} ${carded[p.metering].right}, mais seulement à ${settings(p)}. Chaque IL que coûte un filtre se paie en bruit.`,
  light_holds_density: (p, u) =>
    `La lumière manque avant la couleur : avec plus de lumière, ${filterName(p.wanted)} conviendrait mieux. À ${depth(p.depth_m, u)}, l’image demande déjà ${timed(p)}, et un filtre plus dense se paie en bruit. Une cadence plus lente ou un objectif plus lumineux permettraient d’en monter un.`,
  densest_tried: (p) =>
    `Le filtre le plus dense essayé ici a une densité de ${densityOf(p.density)}, et à ces profondeurs c’est le meilleur : un filtre encore plus dense ferait peut-être mieux. On n’en fabrique guère d’aussi denses ; parmi les plus faibles, le plus dense que vous trouverez s’en approche le plus.`,
  filter_shape_assumed: () =>
    "Aucune norme ne fixe la courbe d’un filtre. Les formes prises ici sont des hypothèses ; ce qu’un autre filtre du même nom changerait est compté dans l’incertitude.",
  filter_trade_rule_blue: (_, u) =>
    `Pratique courante : le filtre rouge en eau bleue, à partir de ${depth(3, u)} environ.`,
  filter_trade_rule_green: () => "Pratique courante : le filtre magenta en eau verte.",
};
