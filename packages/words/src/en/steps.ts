import type { Coded, Gear, Mount, StepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
/** English texts of the steps of a plan: what to do, and why. */
import { dialFNumber, dialShutter, settings } from "./dial.js";
import { filterName } from "./filter-name.js";
import { kelvin, redder, shown } from "./format.js";
import { spoken, spokenDepths } from "./list.js";
import { waysOut } from "./ways-out.js";
import { waysToPay } from "./ways-to-pay.js";

export const steps: Texts<StepCodes, StepText> = {
  mount_filter: (p) => ({
    text: `Mount ${filterName(p.filter)} while the housing is dry and open, and check that it is clean.`,
    why: `It brings the mean colour error from ${shown(p.without_e, 1)} down to ${shown(p.with_e, 1)} and costs ${shown(p.loss_stops, 1)} stops of light.`,
  }),
  carry_filter: (p) => ({
    text: `Carry ${filterName(p.filter)} on ${MOUNTS[p.mount].name}, clean, for ${shown(p.from_m, 1)} to ${shown(p.to_m, 1)} m.`,
    why: `There it leaves less colour error than none: over the dive ${shown(p.with_e, 1)} instead of ${shown(p.without_e, 1)}. It costs ${shown(p.loss_stops, 1)} stops of light.`,
  }),
  no_filter: (p) => ({
    text: "Leave the lens without a colour filter.",
    why: `No filter would better the colours by enough to be worth the light that it takes (mean colour error without one: ${shown(p.error, 1)}).`,
  }),
  no_filter_for_lamps: () => ({
    text: "Leave the lens without a colour filter.",
    why: "The lamps make the light: a filter on the lens would only take from it.",
  }),
  neutral_density: (p) => ({
    text: `Bring neutral density ${shown(p.density, 1)}${p.f_number === undefined ? "" : `, or plan to close down to f/${dialFNumber(p.f_number)}`}.`,
    why: `Where it is shallowest there are ${shown(p.stops, 1)} stops too much light for these settings.`,
  }),
  set_frame: (p) => ({
    text: `Set the exposure time to ${dialShutter(p.exposure.shutter_s)}, exposure and white balance to manual, recording at ${shown(p.bits)} bits.`,
    why: "Automatic settings drift with depth and cannot be graded together.",
  }),
  pack_card: () => ({
    text: "Clip a grey or white card to your harness, where you reach it with one hand.",
    why: "Underwater a card is the only sure white: kelvin settings do not describe this light.",
  }),
  check_lamps: (p) => ({
    text: "Charge and check the lamps; test them in water, not in air.",
    why: `They are to give about ${shown(Math.round(p.lux / 100) * 100)} lx on the subject at ${shown(p.distance_m, 1)} m.`,
  }),
  filter_lamps: (p) => ({
    text: `Put ${filterName(p.filter)} on each lamp.`,
    why: `It makes lamp light match daylight at depth: a split of ${shown(p.left, 1)} is left (CIEDE2000).`,
  }),
  start_exposure: (p) => ({
    text: `Begin with ${settings(p)}${p.is_too_bright ? " behind the neutral density" : ""}; check the brightest parts of the picture.`,
    why: `A grey subject there asks for EV ${shown(p.ev, 1)} at ISO 100.`,
  }),
  balance_on_card: (p) => ({
    text: `Hold the card upright before the subject, out of your shadow, fill the middle of the frame with it and set the white balance.${p.cast > 0 ? " The camera will not make it quite neutral." : ""}`,
    why:
      p.cast > 0
        ? `The balance takes out what water and filter do to white, all but a cast of ${shown(p.cast, 1)} (CIEDE2000), which is left to the grade.`
        : "The balance takes out what water and filter do to white.",
  }),
  balance_on_card_in_lamp_light: (p) => ({
    text: `Lamps on: hold the card where the subject will be and set the white balance to it.${p.cct_K === undefined ? "" : ` Without a card, set ${kelvin(p.cct_K)} K, the lamps' own.`}`,
    why: `Set to the lamps' own colour instead, water between lamp, subject and camera would leave a cast of ${shown(p.cast, 1)} (CIEDE2000).`,
  }),
  balance_again: (p) => ({
    text: `Balance again on the card at ${spokenDepths(p.depths_m)}.`,
    why: `There the cast since the last balance reaches ${shown(p.tolerance, 1)} (CIEDE2000).`,
  }),
  filter_in: (p) => ({
    text: `At ${shown(p.depth_m, 1)} m ${MOUNTS[p.mount].on}, open up ${shown(p.stops, 1)} stops and balance again.`,
    why: "From here on it leaves less colour error than none.",
  }),
  filter_out: (p) => ({
    text: `At ${shown(p.depth_m, 1)} m ${MOUNTS[p.mount].off}, close down ${shown(p.stops, 1)} stops and balance again.`,
    why: "From here on it leaves more colour error than none.",
  }),
  deep_exposure: (p) => ({
    text: `By this depth open up to ${settings(p)}.`,
    why: `The subject is ${shown(p.stops, 1)} stops darker here than at the start, lens filter included.`,
  }),
  too_dark: (p) => ({
    text: `Even with ${settings(p)}, ${shown(p.shortfall_stops, 1)} stops are missing here. ${p.ways.length > 0 ? p.ways.map((way) => wayText(waysToPay, way)).join(" Or: ") : "Nothing within reach pays for it."}`,
    why: "The camera's most sensitive settings do not reach.",
  }),
  come_close: (p) => ({
    text: "Come closer to the subject before you change anything else.",
    why: `Over ${shown(p.distance_m, 1)} m only ${shown(p.percent)} % of the contrast is left: haze, not colour, is the limit.`,
  }),
  lamps_off: (p) => ({
    text: "Leave the lamps switched off, and on the rig.",
    why: `Balanced to daylight, what they light would differ by ${shown(p.split, 1)} (CIEDE2000), ${redder(p.red_excess)}; off, the subject loses ${shown(p.cost, 1)} stops.`,
  }),
  lamps_other_way: (p) => ({
    text: `If the lamps are to stay on: ${wayText(waysOut, p.way)}`,
    why: `That leaves a split of ${shown(p.left, 1)} (CIEDE2000); under 5 it is not seen at a glance.`,
  }),
  lamps_from: (p) => ({
    text: `From ${shown(p.depth_m, 1)} m down they may go on, with a balance of their own on a card in their light.`,
    why: "There they outshine daylight on the subject.",
  }),
  lamps_lead: (p) => ({
    text: "Switch the lamps on and keep the subject within their reach; balance to them.",
    why: `On the subject they outshine daylight by ${shown(p.green, 1)} stops in green.`,
  }),
  lamps_hardly_show: (p) => ({
    text: "The lamps may stay on; balance to daylight.",
    why: `Daylight outshines them by ${shown(-p.green, 1)} stops in green: they hardly show.`,
  }),
  lamps_only: (p) => ({
    text: "Keep lamp and subject at the distance at which you balanced: the balance holds as long as the distance does.",
    why: `The water between takes ${shown(p.red, 2)} stops of red, ${shown(p.green, 2)} of green and ${shown(p.blue, 2)} of blue, and more of each with distance.`,
  }),
  mixing_zone: (p) => ({
    text: `From ${shown(p.from_m, 1)} to ${shown(p.to_m, 1)} m lamps and daylight fight: choose one of them there.`,
    why: "One balance cannot make both neutral.",
  }),
  hold_lamps_wide: (p) => ({
    text: "Hold the lamps far from the lens and point them past the subject.",
    why: `Haze that they light is about ${shown(p.percent)} % as bright as a grey subject.`,
  }),
  grade_red: (p) => ({
    text: `In the grade, expect red down to about ${shown(p.acceptable_m)} m, little below, and none below ${shown(p.gone_m)} m.`,
    why: "Red that was not recorded cannot be brought back afterwards.",
  }),
  lamps_off_before_air: () => ({
    text: "Switch the filming lamps off before they leave the water; keep a light of your own to see and be seen by.",
    why: "Water cools filming lamps; in air they overheat and can melt a plastic filter.",
  }),
  rinse: (p) => ({
    text: `Rinse and dry ${spoken(p.gear.map((item) => GEAR[item]))} as ${p.gear.length === 1 ? "its maker says" : "their makers say"} before anything is opened.`,
    why: "Salt scratches glass, and water drops reach the sensor when a wet housing is opened.",
  }),
};

const GEAR: Readonly<Record<Gear, string>> = {
  housing: "the housing",
  filter: "the filter",
  lamps: "the lamps",
};

const MOUNTS: Readonly<Record<Mount, { on: string; off: string; name: string }>> = {
  flip: { on: "swing the filter in", off: "swing the filter out", name: "its flip mount" },
  clip_on: { on: "clip the filter on", off: "take the filter off", name: "its clip mount" },
};

/** One of several ways, in the middle of a sentence of its own. */
function wayText<Ways>(texts: Texts<Ways, string>, { code, parameters }: Coded<Ways>): string {
  const text: (parameters: never) => string = texts[code];
  return text(parameters as never);
}
