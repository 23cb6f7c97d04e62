import type { LampPlan, LampSummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { filterName } from "./filter-name.js";

const LAMPS: Readonly<Record<LampPlan, string>> = {
  none: "no video lights",
  lamps_off: "video lights off",
  lamps_with_filter: "filtered video lights",
  lamps_with_daylight: "video lights on among daylight, white balance set in both",
  lamps_lead: "video lights on, white balance set in their light",
  lamps_only: "video lights alone",
  daylight_leads: "video lights on, white balance set in daylight",
};

/** What is done with the video lights, in a sentence. */
export const lampSummary: Texts<LampSummaryCodes, string> = {
  lamps_off: () => "Leave the video lights off: their colour would not match daylight.",
  lamps_with_filter: () => "Put the filters on the video lights and set the white balance in daylight.",
  lamps_with_daylight: () => "Leave the video lights on and set the white balance in both lights.",
  lamps_lead: () => "Let the video lights lead and set the white balance in their light.",
  lamps_only: () => "Set the white balance on a card in the light of the video lights, at working distance.",
  daylight_leads: () => "The video lights hardly show against daylight.",
  close_lamps: (p) =>
    `A close call: ${LAMPS[p.plan]}${p.filter ? `, with ${filterName(p.filter)} on the lens,` : ""} would do about as well.`,
};
