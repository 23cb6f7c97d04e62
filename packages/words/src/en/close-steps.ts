import type { StepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { distance, shareOf } from "./format.js";

/** English text of the step that cuts the water between lens and subject: in green water a plain plan has it. */
export const closeSteps: Texts<Pick<StepCodes, "come_close">, StepText> = {
  come_close: (p, u) => ({
    text: "Get as close to the subject as you can, under control, before you set anything: here nothing helps more.",
    why: `Through ${distance(p.distance_m, u)} of this water ${shareOf(p.percent)} of the contrast is left.`,
  }),
};
