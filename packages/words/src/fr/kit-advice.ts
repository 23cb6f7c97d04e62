import type { KitAdviceReasons } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { filterName } from "./filter-name.js";
import { shown, spoken } from "./format.js";

const onDives = (dives: number): string => (dives === 1 ? "lors d’une plongée" : `lors de ${dives} plongées`);
const allDives = (dives: number): string =>
  dives === 1 ? "la plongée" : dives === 2 ? "les deux plongées" : `les ${dives} plongées`;
const limit = (delta_e00: number): string => shown(delta_e00, Number.isInteger(delta_e00) ? 0 : 2);
const more = (delta_e00: number): string => shown(delta_e00, 1);

/** Pourquoi un équipement est ce qu’il est. */
export const kitAdviceReasons: Texts<KitAdviceReasons, string> = {
  kit_smallest: (p) =>
    `${p.pieces} ${p.pieces === 1 ? "pièce" : "pièces"} sur ${p.of_pieces} ${p.pieces === 1 ? "suffit" : "suffisent"} pour ${allDives(p.dives)}. Avec moins, cela ne suffit pas.`,
  kit_nothing_needed: (p) =>
    `Pour ${allDives(p.dives)}, vous n’avez besoin d’aucune pièce : même avec toutes (${p.of_pieces}), vous ne verriez pas de différence.`,
  kit_greedy: (p) =>
    `Aucun choix d’au plus ${p.most_tried} pièces ne suffit. Ces ${p.pieces} sur ${p.of_pieces} ont été réunies pièce par pièce ; moins suffiraient peut-être.`,
  kit_limit_judged: (p) =>
    `À chaque plongée, l’erreur de couleur dépasse de moins de ${limit(p.limit_delta_e00)} celle que vous auriez avec toutes les pièces sous la main. Un écart de 1 se voit à peine.`,
  kit_limit_given: (p) =>
    `À chaque plongée, l’erreur de couleur dépasse de moins de ${limit(p.limit_delta_e00)} celle que vous auriez avec toutes les pièces sous la main, comme vous l’avez demandé.`,
  kit_loses_most: (p) =>
    `C’est ${p.dive} qui perd le plus : ${more(p.delta_e00)} d’erreur de couleur en plus qu’avec toutes les pièces sous la main.`,
  kit_loses_nothing: () =>
    "Avec ce choix, chaque plongée est aussi bonne qu’avec toutes les pièces sous la main.",
  kit_dives_close: (p) =>
    `C’est serré pour ${spoken(p.dives)} : vu les incertitudes, le choix n’y suffit peut-être pas.`,
  kit_pieces_close: (p) =>
    `C’est serré pour ${spoken(p.pieces)} : vu les incertitudes, le choix suffit peut-être sans ${p.pieces.length === 1 ? "elle" : "elles"}.`,
  kit_one_light_at_a_time: (p) =>
    `Sur les ${p.lights} phares vidéo, une plongée n’en utilise qu’un à la fois. Les phares que vous utilisez ensemble sont une seule pièce, avec leur nombre.`,
  kit_one_more: (p) =>
    `Si vous prenez un filtre de plus, c’est ${filterName(p.filter)} qui aide le plus : jusqu’à ${more(p.delta_e00)} d’erreur de couleur en moins, ${onDives(p.dives)}.`,
  kit_no_more_helps: (p) =>
    `Aucun autre filtre rouge ou magenta n’enlève ${limit(p.limit_delta_e00)} ou plus à l’erreur de couleur, à aucune plongée.`,
  piece_buys: (p) =>
    `Sans elle, l’erreur de couleur augmente de ${more(p.delta_e00)} au plus ${onDives(p.dives)}.`,
  piece_lights: (p) => `Sans elle, vous n’avez pas de lumière pour filmer ${onDives(p.dives)}.`,
  piece_holds: (p) => `Elle tient ${spoken(p.filters)} ${onDives(p.dives)}.`,
  piece_spared: (p) =>
    `Avec toutes les pièces sous la main, vous l’utiliseriez ${onDives(p.dives)}, pour au plus ${more(p.delta_e00)} d’erreur de couleur en moins. C’est sous la limite.`,
  piece_never_used: () => "À chaque plongée, une autre pièce, ou aucune, fait aussi bien.",
  piece_never_fits: () =>
    "Avec les bagues et les supports disponibles, elle ne va sur l’appareil à aucune plongée.",
  piece_not_judged: () =>
    "Un filtre ND change l’exposition et non les couleurs : il n’est donc pas jugé ici. dive-advice dit où il vous en faut un.",
};
