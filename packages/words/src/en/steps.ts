import type { Gear, Mount } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { SaidSteps } from "../calculation-texts.js";
import type { Texts } from "../problems/texts.js";
import { textOf } from "../text-of.js";
import { capital } from "./capital.js";
import { dialShutter, setting, settings } from "./dial.js";
import { filterName, takeOff } from "./filter-name.js";
import {
  castOf,
  depth,
  depthNumber,
  depths,
  distance,
  errorFall,
  kelvin,
  neutral,
  shown,
  span,
  stops,
  strength,
} from "./format.js";
import { lampSteps } from "./lamp-steps.js";
import { spoken } from "./list.js";
import { waysToPay } from "./ways-to-pay.js";

/** English texts of the steps of a plan: what to do, and why. */
export const steps: Texts<SaidSteps, StepText> = {
  ...lampSteps,
  mount_filter: (p) => ({
    text: `${takeOff(p)}Mount ${filterName(p.filter)}${p.outside ? "" : " while the housing is dry and open"}, and check that it is clean.`,
    why: worth(p),
  }),
  keep_filter: (p) => ({
    text: `Leave ${filterName(p.filter)} on the lens.${p.better ? ` ${capital(filterName(p.better))} is better by too little to change for.` : ""}`,
    why: worth(p),
  }),
  carry_filter: (p, u) => ({
    text: `${takeOff(p)}Carry ${filterName(p.filter)} on ${MOUNTS[p.mount].name}, clean, for ${span(p.from_m, p.to_m, u)}${p.from_start ? "; have it on the lens where you begin filming" : ""}.`,
    why: worth(p),
  }),
  no_filter: (p) => ({
    text: `${takeOff(p)}Leave the lens without a colour filter.`,
    why: `No filter improves the colours by enough for the light that it costs. Without one, a ${strength(p.error)} colour error is left.`,
  }),
  no_filter_for_lamps: (p) => ({
    text: `${takeOff(p)}Leave the lens without a colour filter.`,
    why: "Your video lights make the light: a filter would only take some of that away.",
  }),
  neutral_density: (p) => ({
    text: `${p.mount === "none" ? "Mount" : "Carry"} ${neutral(p.density)}; ${p.mount === "none" ? "it stays on for the whole dive" : `start with it on the lens, on ${MOUNTS[p.mount].name}`}.`,
    why: `Where it is brightest, these settings let in ${stops(p.stops)} too much light.`,
  }),
  set_frame: (p) => ({
    text: `Set the exposure time to ${dialShutter(p.exposure.shutter_s)}, exposure and white balance to manual, and record in ${shown(p.bits)} bits.`,
    why: "Automatic settings drift with depth and cannot be graded together.",
  }),
  start_exposure: (p) => ({
    text: `Start with ${setting(p)}, and check the highlights.`,
    why: `A grey subject there meters EV ${shown(p.ev)} at ISO 100${p.behind ? " without the ND" : ""}.`,
  }),
  set_modes: (p) => ({
    text: `Set the exposure to ${p.exposure_mode === "auto" ? "automatic" : `manual, with an exposure time of ${dialShutter(p.exposure.shutter_s)}`}, and the white balance to ${{ auto: "automatic", kelvin: "a Kelvin preset", card: "custom, on a card" }[p.white_balance_mode]}.`,
    why: "Automatic settings drift with what is in the picture: check them now and then.",
  }),
  exposure_by_itself: (p) => ({
    text:
      Math.abs(p.stops) < 1 / 3
        ? "Leave the exposure to the camera, and check the highlights."
        : `Leave the exposure to the camera, with exposure compensation at ${p.stops > 0 ? "+" : "-"}${stops(Math.abs(p.stops))} for the subject, and check the highlights.`,
    why: "The camera meters the whole picture, water and all.",
  }),
  balance_by_itself: (p) => ({
    text: "Leave the white balance on automatic, and look at a picture before you go on.",
    why: `The camera makes the whole picture grey on average, water and all: ${castOf(p.cast)} stays on grey.`,
  }),
  balance_in_kelvin: (p) => ({
    text: `Set the white balance to ${kelvin(p.cct_K)} K, and leave it there.`,
    why: `No Kelvin preset knows the water: ${castOf(p.cast)} stays on grey.`,
  }),
  balance_on_card: (p, u) => ({
    text: `${p.near_m === undefined ? "Hold the card upright in front of the subject, out of your shadow. Fill the middle of the frame with it and set the white balance." : `Do not go after the subject: let your buddy hold the card at its depth, ${distance(p.near_m, u)} from the camera and turned as the subject is. Fill the middle of the frame with it and set the white balance.`}${p.cast > 0 ? " Take out the rest in the edit." : ""}`,
    why: `The white balance takes out what water and filter do to white${p.cast > 0 ? `, all but ${castOf(p.cast)}` : ""}.`,
  }),
  balance_on_card_in_lamp_light: (p) => ({
    text: `Switch the video lights on, hold the card where the subject will be and set the white balance.${p.cct_K === undefined ? "" : ` Without a card, set the lights' own ${kelvin(p.cct_K)} K: second best.`}`,
    why: `Without a card, the water between light, subject and camera leaves ${castOf(p.cast)}.`,
  }),
  balance_again: (p, u) => ({
    text: `White-balance again on the card at ${depths(p.depths_m, u)}.`,
    why: `By then ${castOf(p.tolerance)} has built up${p.asked ? `, more than you allow: you need ${depth(2, u)} and a minute between balances` : ""}.`,
  }),
  filter_in: (p) => ({
    text: `${capital(MOUNTS[p.mount].on)}, set ${setting(p)} and white-balance again.`,
    why: "From here on the filter improves the colours.",
  }),
  filter_out: (p) => ({
    text: `${capital(MOUNTS[p.mount].off)}, set ${setting(p)} and white-balance again.`,
    why: "From here on the filter does not improve the colours.",
  }),
  neutral_off: (p) => ({
    text: `Take the ND off and set ${setting(p)}.`,
    why: "It is no longer too bright without it.",
  }),
  neutral_on: (p) => ({
    text: `Put the ND back on and set ${setting(p)}.`,
    why: "From here on it is too bright without it.",
  }),
  deep_exposure: (p, u) => ({
    text: `Expose more as you go down: at ${depth(p.depth_m, u)}, ${setting(p)}.`,
    why: `The subject is ${stops(p.stops)} darker than where you set the camera last.`,
  }),
  shallow_exposure: (p, u) => ({
    text: `Expose less on the way up: at ${depth(p.depth_m, u)}, ${setting(p)}.`,
    why: `The subject is ${stops(p.stops)} brighter than where you set the camera last.`,
  }),
  too_dark: (p, u) => ({
    text: `Even with ${settings(p)}, this is ${stops(p.shortfall_stops)} too dark. ${p.ways.length > 0 ? p.ways.map((way) => textOf(waysToPay, way, u)).join(" Or: ") : "Nothing you can set makes up for it."}`,
    why: "The camera is at its limit there.",
  }),
  come_close: (p, u) => ({
    text: "Come closer to the subject, under control, before you change anything else.",
    why: `Through ${distance(p.distance_m, u)} of this water only ${shown(p.percent)} % of the contrast is left.`,
  }),
  grade_red: (p, u) => ({
    text: `In the pictures, expect good red down to about ${depth(p.acceptable_m, u)}${p.gone_m === undefined ? ", and little below that" : depthNumber(p.acceptable_m, u) === depthNumber(p.gone_m, u) ? " and none below that" : `, little below that, and none below ${depth(p.gone_m, u)}`}.`,
    why: "No edit brings back red that was not recorded.",
  }),
  grade_no_red: (p, u) => ({
    text: `In the pictures, expect no full red: ${p.gone_m === undefined ? "it is weak from the start of this dive" : depthNumber(p.gone_m, u) === "0" ? "it is lost from the surface down" : `it is weak from the start of this dive and gone below ${depth(p.gone_m, u)}`}.`,
    why: "No edit brings back red that was not recorded.",
  }),
  lamps_off_before_air: () => ({
    text: "Switch the video lights off before they leave the water, and keep a dive light on to see and be seen.",
    why: "Water cools them. In air they overheat, and can melt a plastic filter.",
  }),
  rinse: (p) => ({
    text: `Rinse and dry ${spoken(p.gear.map((item) => GEAR[item]))} as ${p.gear.length === 1 ? "its maker says" : "their makers say"} before you open anything. Then check the footage for colour casts, blown highlights and focus.`,
    why: "Salt scratches glass, and a wet housing drips onto the sensor when you open it.",
  }),
};

const GEAR: Readonly<Record<Gear, string>> = {
  housing: "the housing",
  filter: "the filter",
  lamps: "the video lights",
};

const MOUNTS: Readonly<Record<Mount, { on: string; off: string; name: string }>> = {
  flip: { on: "swing the filter in", off: "swing the filter out", name: "its flip mount" },
  clip_on: { on: "clip the filter on", off: "take the filter off", name: "its clip mount" },
};

const worth = (p: { with_e: number; without_e: number; loss_stops: number }): string =>
  `It ${errorFall(p.without_e, p.with_e)} and costs ${stops(p.loss_stops)} of light.`;
