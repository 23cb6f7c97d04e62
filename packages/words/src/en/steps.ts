import type { Coded, Gear, Mount, NamedFilter, StepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
/** English texts of the steps of a plan: what to do, and why. */
import { dialShutter, setting, settings } from "./dial.js";
import { filterName } from "./filter-name.js";
import { castOf, kelvin, metres, neutral, redder, shown, stops } from "./format.js";
import { depths, spoken } from "./list.js";
import { waysOut } from "./ways-out.js";
import { waysToPay } from "./ways-to-pay.js";

export const steps: Texts<StepCodes, StepText> = {
  mount_filter: (p) => ({
    text: `${takeOff(p)}Mount ${filterName(p.filter)} while the housing is dry and open; see that it is clean.`,
    why: worth(p),
  }),
  keep_filter: (p) => ({
    text: `Leave ${filterName(p.filter)} on the lens.${p.better ? ` ${capital(filterName(p.better))} is better by too little to change for.` : ""}`,
    why: worth(p),
  }),
  carry_filter: (p) => ({
    text: `${takeOff(p)}Carry ${filterName(p.filter)} on ${MOUNTS[p.mount].name}, clean, for ${metres(p.from_m)} to ${metres(p.to_m)} m.`,
    why: worth(p),
  }),
  no_filter: (p) => ({
    text: `${takeOff(p)}Leave the lens without a colour filter.`,
    why: `No filter improves the colours by enough for the light that it costs (mean colour error ${shown(p.error, 1)}).`,
  }),
  no_filter_for_lamps: (p) => ({
    text: `${takeOff(p)}Leave the lens without a colour filter.`,
    why: "The video lights make the light: a filter would only cost some of it.",
  }),
  neutral_density: (p) => ({
    text: `${p.mount === "none" ? "Mount" : "Carry"} ${neutral(p.density)}; ${p.mount === "none" ? "it stays on for the whole dive" : `it begins on the lens, on ${MOUNTS[p.mount].name}`}.`,
    why: `Where it is brightest, these settings take ${stops(p.stops)} too much light.`,
  }),
  set_frame: (p) => ({
    text: `Set the exposure time to ${dialShutter(p.exposure.shutter_s)}, exposure and white balance to manual, recording at ${shown(p.bits)} bits.`,
    why: "Automatic settings drift with depth and cannot be graded together.",
  }),
  check_lamps: (p) => ({
    text: "Charge and check the video lights; test them in water, not in air.",
    why: `They are to give about ${shown(Number(p.lux.toPrecision(2)))} lx on the subject at ${shown(p.distance_m, 1)} m.`,
  }),
  filter_lamps: (p) => ({
    text: `${takeOff(p)}Put ${filterName(p.filter)} on each video light.`,
    why: `It makes their light match daylight at depth: ${castOf(p.left)} is left.`,
  }),
  keep_lamp_filters: (p) => ({
    text: `Leave ${filterName(p.filter)} on the video lights.`,
    why: `With it ${castOf(p.left)} is left against daylight.`,
  }),
  bare_lamps: (p) => ({
    text: `Take ${filterName(p.filter)} off the video lights.`,
    why: "They lead here: it has no daylight to match, and costs light.",
  }),
  start_exposure: (p) => ({
    text: `Begin with ${setting(p)}; check the brightest parts of the picture.`,
    why: `A grey subject there meters EV ${shown(p.ev)} at ISO 100${p.behind ? " without the ND" : ""}.`,
  }),
  set_modes: (p) => ({
    text: `Set the exposure to ${p.exposure_mode === "auto" ? "automatic" : `manual, with an exposure time of ${dialShutter(p.exposure.shutter_s)}`}, and the white balance to ${{ auto: "automatic", kelvin: "a fixed temperature", card: "a card" }[p.white_balance_mode]}.`,
    why: "What is on automatic drifts with what is in the picture: look at it now and then.",
  }),
  exposure_by_itself: (p) => ({
    text:
      Math.abs(p.stops) < 1 / 3
        ? "Leave the exposure to the camera; check the brightest parts of the picture."
        : `Leave the exposure to the camera, with a compensation of ${p.stops > 0 ? "+" : "-"}${shown(Math.abs(p.stops), 1)} for the subject; check the brightest parts of the picture.`,
    why: "It meters the whole picture, water and all.",
  }),
  balance_by_itself: (p) => ({
    text: "Leave the white balance on automatic, and look at a picture before you go on.",
    why: `The camera takes the whole picture for grey on the average, water and all: a cast of ${shown(p.cast, 1)} (CIEDE2000) stays on grey.`,
  }),
  balance_in_kelvin: (p) => ({
    text: `Set the white balance to ${kelvin(p.cct_K)} K, and leave it there.`,
    why: `No setting in kelvin knows the water: a cast of ${shown(p.cast, 1)} (CIEDE2000) stays on grey.`,
  }),
  balance_on_card: (p) => ({
    text: `Hold the card upright before the subject, out of your shadow, fill the middle of the frame with it and set the white balance.${p.cast > 0 ? " Balance the rest in the edit." : ""}`,
    why: `The balance takes out what water and filter do to white${p.cast > 0 ? `, all but ${castOf(p.cast)}` : ""}.`,
  }),
  balance_on_card_in_lamp_light: (p) => ({
    text: `Video lights on: hold the card where the subject will be and set the white balance to it.${p.cct_K === undefined ? "" : ` Without a card ${kelvin(p.cct_K)} K, the lights' own, is second best.`}`,
    why: `Without it the water between light, subject and camera leaves ${castOf(p.cast)}.`,
  }),
  balance_again: (p) => ({
    text: `Balance again on the card at ${depths(p.depths_m)}.`,
    why: `Since the last balance ${castOf(p.tolerance)} has built up${p.asked ? `, more than the ${shown(p.asked.tolerance)} allowed: a hand needs 2 m and a minute between balances` : ""}.`,
  }),
  filter_in: (p) => ({
    text: `${capital(MOUNTS[p.mount].on)}, set ${setting(p)} and balance again.`,
    why: "From here on it improves the colours.",
  }),
  filter_out: (p) => ({
    text: `${capital(MOUNTS[p.mount].off)}, set ${setting(p)} and balance again.`,
    why: "From here on it does not improve the colours.",
  }),
  neutral_off: (p) => ({
    text: `Take the ND off and set ${setting(p)}.`,
    why: "It is no longer too bright.",
  }),
  neutral_on: (p) => ({
    text: `Put the ND back on and set ${setting(p)}.`,
    why: "It gets too bright without it.",
  }),
  deep_exposure: (p) => ({
    text: `Open up with the depth, to ${setting(p)} here.`,
    why: `The subject is ${stops(p.stops)} darker than where you set the camera last.`,
  }),
  shallow_exposure: (p) => ({
    text: `Close down again on the way, to ${setting(p)} here.`,
    why: `The subject is ${stops(p.stops)} brighter than where you set the camera last.`,
  }),
  too_dark: (p) => ({
    text: `Even with ${settings(p)}, this is ${stops(p.shortfall_stops)} too dark. ${p.ways.length > 0 ? p.ways.map((way) => wayText(waysToPay, way)).join(" Or: ") : "Nothing within reach pays for it."}`,
    why: "The camera's most sensitive settings do not reach.",
  }),
  come_close: (p) => ({
    text: "Come closer to the subject before you change anything else.",
    why: `Over ${shown(p.distance_m, 1)} m only ${shown(p.percent)} % of the contrast is left.`,
  }),
  lamps_off: (p) => ({
    text: `Leave the video lights switched off, and on the rig.${p.fitted ? ` They carry ${filterName(p.fitted)} now.` : ""}${p.other ? ` If they are to stay on: ${wayText(waysOut, p.other.way)}` : ""}`,
    why: `Balanced to daylight, what they light would show ${castOf(p.split)}, ${redder(p.red_excess)}; off, the subject loses ${stops(p.cost)}.${p.other ? ` The other way leaves ${castOf(p.other.left)}.` : ""}`,
  }),
  lamps_from: (p) => ({
    text: `From ${metres(p.depth_m)} m down they may go on, with a balance of their own on a card in their light.`,
    why: "There they outshine daylight on the subject.",
  }),
  lamps_lead: (p) => ({
    text: `Switch the video lights on and keep the subject within their reach.${wide(p)}`,
    why: `On the subject they outshine daylight by ${stops(p.green)} in green.`,
  }),
  lamps_hardly_show: (p) => ({
    text: p.haze
      ? "Switch the video lights off: they would light little but backscatter."
      : "The video lights may stay on.",
    why: `Daylight outshines them by ${stops(-p.green)} in green: they hardly show.`,
  }),
  lamps_only: (p) => ({
    text: `Keep light and subject at the distance at which you balanced.${wide(p)}`,
    why: `The water between costs ${stops(p.red)} of red, ${stops(p.green)} of green and ${stops(p.blue)} of blue.`,
  }),
  mixing_zone: (p) => ({
    text: `From ${metres(p.from_m)} to ${metres(p.to_m)} m video lights and daylight fight: choose one of them there.`,
    why: "One balance cannot make both neutral.",
  }),
  grade_red: (p) => ({
    text: `In the grade, expect red down to about ${shown(p.acceptable_m)} m, little below, and none below ${shown(p.gone_m)} m.`,
    why: "Red that was not recorded cannot be brought back afterwards.",
  }),
  grade_no_red: (p) => ({
    text: `In the grade, expect no full red: it is weak from the start of this dive and gone below ${shown(p.gone_m)} m.`,
    why: "Red that was not recorded cannot be brought back afterwards.",
  }),
  lamps_off_before_air: () => ({
    text: "Switch the video lights off before they leave the water; keep a light to see and be seen by.",
    why: "Water cools them; in air they overheat and can melt a plastic filter.",
  }),
  rinse: (p) => ({
    text: `Rinse and dry ${spoken(p.gear.map((item) => GEAR[item]))} as ${p.gear.length === 1 ? "its maker says" : "their makers say"} before anything is opened. Then look at the footage for colour casts, blown whites and focus.`,
    why: "Salt scratches glass, and water drops reach the sensor when a wet housing is opened.",
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

const wide = (p: { haze?: { percent: number } }): string =>
  p.haze
    ? ` Hold the lights far from the lens and point them past the subject: backscatter is ${shown(p.haze.percent)} % as bright as a grey subject.`
    : "";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const takeOff = (p: { instead_of?: NamedFilter }): string =>
  p.instead_of ? `Take ${filterName(p.instead_of)} off. ` : "";

const worth = (p: { with_e: number; without_e: number; loss_stops: number }): string =>
  `It brings the mean colour error from ${shown(p.without_e, 1)} down to ${shown(p.with_e, 1)} and costs ${stops(p.loss_stops)} of light.`;

/** One of several ways, in the middle of a sentence of its own. */
function wayText<Ways>(texts: Texts<Ways, string>, { code, parameters }: Coded<Ways>): string {
  const text: (parameters: never) => string = texts[code];
  return text(parameters as never);
}
