import type { MountingCauses } from "@sunfathom/planner";
import type { CauseText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";

/** Was unsicher macht, wo ein Filter hinkommt. */
export const mountingCauses: Texts<MountingCauses, CauseText> = {
  pupil_distance: () => ({
    text: "Wie weit die Eintrittspupille hinter dem Filter liegt; das ändert sich mit dem Winkel",
    how_to_shrink: "Gib entrance_pupil_distance_mm an, oder fotografiere mit dem Filter eine weiße Wand.",
  }),
};
