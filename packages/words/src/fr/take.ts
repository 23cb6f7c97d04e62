import type { TakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { filterName, kindName } from "./filter-name.js";
import { distance, neutral, shown } from "./format.js";

/** Ce qu’on emporte, et pour quoi faire. */
export const take: Texts<TakeCodes, TakeText> = {
  lens_filter: (p) => ({ what: filterName(p.filter), why: "Le plan le prévoit sur l’objectif." }),
  neutral_density: (p) => ({ what: neutral(p.density), why: "Sans lui, il y a trop de lumière." }),
  lamp_filters: (p) => ({
    what: `${filterName(p.filter)} pour chaque phare vidéo`,
    why: "Il accorde les phares à la lumière du jour en profondeur.",
  }),
  lamp_filters_lacking: (p) => ({
    what: `un ${kindName(p.kind)} de densité ${shown(p.density, 1)} pour chaque phare vidéo`,
    why: "Aucun filtre de votre matériel ne convient. Avec ceux-là, vous pourriez laisser les phares vidéo allumés.",
  }),
  filter_mount: (p) => ({
    what: { flip: "le support basculant", clip_on: "le support à clip" }[p.mount],
    why: "Il tient le filtre devant le hublot.",
  }),
  lamp: (p, u) => ({
    what: p.check ? "les phares vidéo, chargés et vérifiés" : "les phares vidéo",
    why: p.check
      ? `Le plan compte sur toute leur lumière, à ${distance(p.check.distance_m, u)}.`
      : "Pour cette plongée, ils restent éteints.",
  }),
  dive_light: () => ({
    what: "une lampe de plongée",
    why: "C’est à sa lumière que vous plongez.",
  }),
  card: () => ({
    what: "une charte grise ou blanche, ou une ardoise blanche",
    why: "Toutes les balances des blancs se font dessus : accrochez-la de façon à l’attraper d’une seule main.",
  }),
  spares: () => ({
    what: "des accus chargés, une carte mémoire vide, des joints toriques de rechange et un sachet déshydratant",
    why: "Un accu à plat, une carte pleine, une fuite ou un hublot embué, et le tournage s’arrête.",
  }),
};
