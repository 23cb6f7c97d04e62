import type { AutoStepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { dialShutter } from "./dial.js";
import { castOf, kelvin, stops } from "./format.js";

/** English texts of what is left to the camera, and why. */
export const autoSteps: Texts<AutoStepCodes, StepText> = {
  set_modes: (p) => ({
    text: `Set the exposure to ${p.exposure_mode === "auto" ? "automatic" : `manual, with an exposure time of ${dialShutter(p.exposure.shutter_s)}`}, and the white balance to ${{ auto: "automatic", kelvin: "a Kelvin preset", card: "custom, on a card" }[p.white_balance_mode]}.`,
    why: "Automatic settings drift with what is in the picture: check them now and then.",
  }),
  exposure_by_itself: (p) => ({
    text:
      Math.abs(p.stops) < 1 / 3
        ? "Let the camera expose, and check the highlights."
        : `Set the exposure compensation to ${p.stops > 0 ? "+" : "-"}${stops(Math.abs(p.stops))} for the subject, and check the highlights.`,
    why: "The camera meters the whole picture, water and all.",
  }),
  balance_by_itself: (p) => ({
    text: "Look at the colours of a first picture: the camera sets the white balance on its own.",
    why: `That leaves ${castOf(p.cast)} on grey.`,
  }),
  balance_in_kelvin: (p) => ({
    text: `Set the white balance to ${kelvin(p.cct_K)} K, and leave it there.`,
    why: `No Kelvin preset knows the water: ${castOf(p.cast)} stays on grey.`,
  }),
};
