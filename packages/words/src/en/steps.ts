import type { Gear, Holds, StepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { autoSteps } from "./auto-steps.js";
import { changeSteps } from "./change-steps.js";
import { closeSteps } from "./close-steps.js";
import { dialShutter, setting } from "./dial.js";
import { filterName, takeOff } from "./filter-name.js";
import { worth } from "./filter-worth.js";
import { castOf, depth, depthNumber, depths, distance, shown, strength } from "./format.js";
import { lampSteps } from "./lamp-steps.js";
import { limitSteps } from "./limit-steps.js";
import { spoken } from "./list.js";
import { litSteps } from "./lit-steps.js";

/** English texts of the steps of a plan: what to do, and why. */
export const steps: Texts<StepCodes, StepText> = {
  ...autoSteps,
  ...lampSteps,
  ...litSteps,
  ...closeSteps,
  ...limitSteps,
  ...changeSteps,
  mount_filter: (p, u) => ({
    text: `${takeOff(p)}Mount ${filterName(p.filter)}${p.densest ? ", or the densest that you can get," : ""}${p.outside ? "" : " while the housing is dry and open"}, and check that it is clean.`,
    why: worth(p, u),
  }),
  no_filter: (p) => ({
    text: `${takeOff(p)}Leave the lens without a colour filter.`,
    why: `No filter improves the colours enough for the light that it costs. Without one, a ${strength(p.error)} colour error is left.`,
  }),
  set_frame: (p) => ({
    text: `Set the exposure time to ${dialShutter(p.exposure.shutter_s)}, exposure and white balance to manual, and record in ${p.log ? "log with " : ""}${shown(p.bits)} bits.`,
    why: "Automatic settings drift with depth and cannot be graded together.",
  }),
  start_exposure: (p) => ({
    text: `Start with ${setting(p)}, and check the highlights.${p.against_sun ? " The sun itself burns out: hide it behind the subject." : ""}${p.log ? " Log looks flat: place white by the maker's table, with zebras or waveform." : ""}`,
    why: `A grey subject there meters EV ${shown(p.ev)} at ISO 100${p.behind ? " without the ND" : ""}.`,
  }),
  balance_on_card: (p, u) => ({
    text: `${p.sun_behind ? "Keep the sun behind you. " : ""}${p.far ? "Let the subject come to you, and do not go after it. Hold the card at arm's length, turned as the subject is." : "Hold the card upright in front of the subject, out of your shadow."} Fill the middle of the frame with it and set the white balance.${p.bands ? " Waves move you and throw bands of sunlight here: wait for a calm moment with the card lit evenly." : ""}${p.cast > 0 ? " Only an edit takes out the rest." : ""}${p.holds ? ` Keep this one down to ${depth(p.holds.to_m, u)}.` : ""}`,
    why: `The white balance takes out what water and filter do to white${p.cast > 0 ? `, all but ${castOf(p.cast)}` : ""}.${p.far ? ` The ${distance(p.far.distance_m, u)} of water to the subject leave ${castOf(p.far.cast)} on it, which only an edit takes out.` : ""}${below(p)}`,
  }),
  balance_again: (p, u) => ({
    text: `${p.exposed ? "Set the exposure, then white-balance" : "White-balance"} again on the card at ${depths(p.depths_m, u)}.${p.holds ? ` Keep ${p.depths_m.length > 1 ? "the last" : "this"} one down to ${depth(p.holds.to_m, u)}.` : ""}`,
    why: `By then ${castOf(p.tolerance)} has built up${p.asked ? `. More would leave no time to film` : ""}.${below(p)}`,
  }),
  deep_exposure: (p, u) => ({
    text: `Expose more and more as you go down: at ${depth(p.to_m, u)}, ${setting(p)}.`,
    why: "The subject is darker there.",
  }),
  shallow_exposure: (p, u) => ({
    text: `Expose less and less on the way up: back at ${depth(p.to_m, u)}, ${setting(p)}.`,
    why: "The subject is brighter there.",
  }),
  grade_red: (p, u) => ({
    text: `In the pictures, expect usable red down to about ${depth(p.acceptable_m, u)}${p.gone_m === undefined ? ", and little below that" : depthNumber(p.acceptable_m, u) === depthNumber(p.gone_m, u) ? " and none below that" : `, little below that, and none below ${depth(p.gone_m, u)}`}.${p.left ? ` Even there ${strength(p.left.error)} colour errors are left.` : ""}`,
    why: "No edit brings back red that was not recorded.",
  }),
  rinse: (p) => ({
    text: `Rinse and dry ${spoken(p.gear.map((item) => GEAR[item]))} as ${p.gear.length === 1 ? "its maker says" : "their makers say"} before you open anything. Then check the footage for colour casts, blown highlights and focus${p.profile ? ", and grade it with your profile" : ""}.`,
    why: "Dried salt and grit scratch glass, and a wet housing drips onto the sensor when you open it.",
  }),
};

/** Why no other white balance follows on a long way down. */
const below = ({ holds }: { holds?: Holds }): string => (holds?.because ? BELOW[holds.because] : "");

const BELOW: Readonly<Record<NonNullable<Holds["because"]>, string>> = {
  limit:
    " Deeper, the camera's white balance comes to its limit: a new one would take out only part of the cast.",
  at_limit: " Deeper, the camera's white balance is at its limit: a new one would gain nothing to be seen.",
  little: " Deeper, less of a cast builds up than is worth a new one.",
};

const GEAR: Readonly<Record<Gear, string>> = {
  housing: "the housing",
  filter: "the filter",
  lamps: "the video lights",
};
