import type { MountingCauses } from "@sunfathom/planner";
import type { CauseText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";

/** Lo que hace incierto dónde va un filtro. */
export const mountingCauses: Texts<MountingCauses, CauseText> = {
  pupil_distance: () => ({
    text: "A qué distancia por detrás del filtro está la pupila de entrada, que cambia con el ángulo",
    how_to_shrink: "Indique entrance_pupil_distance_mm, o fotografíe una pared blanca con el filtro puesto.",
  }),
};
