import type { LampCauses } from "@sunfathom/planner";
import type { CauseText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";

/** Ce qui rend incertaine la lumière des phares vidéo. */
export const lampCauses: Texts<LampCauses, CauseText> = {
  lamp_beam: () => ({
    text: "La façon dont le phare vidéo répartit ses lumens dans le faisceau",
    how_to_shrink:
      "Demandez au fabricant l’angle de faisceau mesuré (jusqu’à la moitié de l’intensité du centre) et les lumens qui sortent à l’avant.",
  }),
  lamp_aim: () => ({
    text: "La précision avec laquelle le phare vidéo est pointé",
    how_to_shrink: "Pointez-le dans l’eau, à bout de bras, et contrôlez une image d’essai.",
  }),
  lamp_offset: () => ({
    text: "L’écart entre les phares vidéo et l’axe de visée",
    how_to_shrink: "Rien à mesurer ; avec de longs bras, cela compte moins.",
  }),
};
