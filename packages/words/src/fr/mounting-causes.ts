import type { MountingCauses } from "@sunfathom/planner";
import type { CauseText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";

/** Ce qui rend la place du filtre incertaine. */
export const mountingCauses: Texts<MountingCauses, CauseText> = {
  pupil_distance: () => ({
    text: "À quelle distance derrière le filtre se trouve la pupille d’entrée, qui bouge avec l’angle",
    how_to_shrink:
      "Indiquez entrance_pupil_distance_mm, ou photographiez un mur blanc avec le filtre en place.",
  }),
};
