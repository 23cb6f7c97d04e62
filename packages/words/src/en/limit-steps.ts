import type { StepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { textOf } from "../text-of.js";
import { settings } from "./dial.js";
import { depth, stops } from "./format.js";
import { waysToPay } from "./ways-to-pay.js";

/** English texts of the steps where the light or red is at its limit. */
export const limitSteps: Texts<Pick<StepCodes, "too_dark" | "grade_no_red">, StepText> = {
  too_dark: (p, u) => ({
    text: `Even with ${settings(p)}, this is ${stops(p.shortfall_stops)} too dark. ${p.ways.length > 0 ? p.ways.map((way) => textOf(waysToPay, way, u)).join(" Or: ") : "Nothing you can set makes up for it."}`,
    why: "The camera is at its limit there.",
  }),
  grade_no_red: (p, u) => ({
    text: p.from_start
      ? "In the pictures, expect no red: none is left this deep."
      : `In the pictures, expect no full red: it is weak from the start of this dive${p.gone_m === undefined ? "" : ` and gone below ${depth(p.gone_m, u)}`}.`,
    why: "No edit brings back red that was not recorded.",
  }),
};
