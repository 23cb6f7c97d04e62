import type { StepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { takeOff } from "./filter-name.js";
import { castOf, kelvin, strength } from "./format.js";

/** English texts of the steps that video lights bring with them, apart from what is done with the lights. */
export const litSteps: Texts<
  Pick<
    StepCodes,
    "no_filter_for_lamps" | "lamps_would_help" | "balance_on_card_in_lamp_light" | "lamps_off_before_air"
  >,
  StepText
> = {
  no_filter_for_lamps: (p) => ({
    text: `${takeOff(p)}Leave the lens without a colour filter.`,
    why: "Your video lights make the light: a filter would only take some of that away.",
  }),
  lamps_would_help: (p) => ({
    text: "If you have video lights, take them, and make the plan with them.",
    why: `Without them a ${strength(p.error)} colour error is left behind any filter: the missing colours are too weak here.`,
  }),
  balance_on_card_in_lamp_light: (p) => ({
    text: `Hold the card where the subject will be, in the light of the video lights, and set the white balance.${p.cct_K === undefined ? "" : ` Without a card, set the lights' own ${kelvin(p.cct_K)} K: second best.`}`,
    why: `Without a card, the water between light, subject and camera leaves ${castOf(p.cast)}.`,
  }),
  lamps_off_before_air: () => ({
    text: "Switch the video lights off before they leave the water; the dive light stays on.",
    why: "You go on seeing, and being seen.",
  }),
};
