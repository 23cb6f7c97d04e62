import type { MountingCauses } from "@sunfathom/planner";
import type { CauseText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";

/** What causes doubt on where a filter goes. */
export const mountingCauses: Texts<MountingCauses, CauseText> = {
  pupil_distance: () => ({
    text: "How far the entrance pupil lies behind the filter, which changes with the angle",
    how_to_shrink: "Give entrance_pupil_distance_mm, or take a picture of a white wall with the filter on.",
  }),
};
