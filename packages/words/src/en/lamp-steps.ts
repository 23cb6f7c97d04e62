import type { LampStepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { textOf } from "../text-of.js";
import { capital } from "./capital.js";
import { filterName, takeOff } from "./filter-name.js";
import {
  brightness,
  castOf,
  depth,
  distance,
  errorFall,
  span,
  stops,
  strength,
  tooRed,
  wholeStops,
} from "./format.js";
import { waysOut } from "./ways-out.js";

/** English texts of what is done with the video lights, and why. */
export const lampSteps: Texts<LampStepCodes, StepText> = {
  filter_lamps: (p) => ({
    text: `${takeOff(p)}Put ${filterName(p.filter)} on each video light.`,
    why: `It matches their light to daylight at depth and leaves ${castOf(p.left)}.`,
  }),
  keep_lamp_filters: (p) => ({
    text: `Leave ${filterName(p.filter)} on the video lights.`,
    why: `With it their light shows ${castOf(p.left)} against daylight.`,
  }),
  bare_lamps: (p) => ({
    text: `Take ${filterName(p.filter)} off the video lights.`,
    why: `The lights lead here: there is no daylight to match, and the filter costs light.`,
  }),
  lamps_off: (p, u) => ({
    text: `Leave the video lights switched off.${p.fitted ? ` They have ${filterName(p.fitted)} on now.` : ""}${p.other ? ` If you want them on: ${textOf(waysOut, p.other.way, u)}` : ""}`,
    why: `Daylight colours the whole picture, the video lights only what they reach, and one white balance does not fit both: set in daylight, it leaves ${castOf(p.split)}${tooRed(p.red_excess)} on what they reach. The settings make up for ${stops(p.cost)} less light on the subject.${p.other ? ` With them on in that way, ${castOf(p.other.left)} stays.` : ""}`,
  }),
  lamps_for_subject: (p) => ({
    text: "For a dive of close-ups alone, where nothing counts but what the video lights reach: no filter on the lens, video lights on, white balance on the card in their light.",
    why: `That leaves a ${strength(p.error)} colour error on the subject, and a ${strength(p.around)} one around it.`,
  }),
  lamps_from: (p, u) => ({
    text: `From ${depth(p.depth_m, u)} down you can switch them on: set a new white balance on a card in their light.`,
    why: "There your video lights outshine daylight on the subject.",
  }),
  lamps_on: (p, u) => ({
    text: `Switch the video lights on, ${distance(p.distance_m, u)} from where the subject will be.${p.wide ? " Hold them wide of the lens, so that particles close to it stay dark." : ""}`,
    why: "Exposure and white balance are set in their light.",
  }),
  lamps_lead: (p) => ({
    text: `Keep the subject in the light of the video lights.${wide(p)}`,
    why: `On the subject they outshine daylight by ${wholeStops(p.green)}.`,
  }),
  lamps_hardly_show: (p, u) => ({
    text: `${p.haze ? "Switch the video lights off: they would show little but backscatter." : "You can leave the video lights on."}${p.fight ? ` From ${span(p.fight.from_m, p.fight.to_m, u)} they fight with daylight: use only one of the two there.` : ""}`,
    why: `Daylight outshines the video lights by ${wholeStops(-p.green)}: they hardly show.`,
  }),
  lamps_with_daylight: (p) => ({
    text: `Leave the video lights on, as far from the subject as for the white balance; set it again when that changes: closer to them everything turns redder.${p.unused ? ` ${capital(filterName(p.unused))} stays off them.` : ""}${wide(p)}`,
    why: `Against the video lights off, the mix of both lights ${errorFall(p.without_e, p.with_e)} over the whole picture. What the video lights do not reach shows ${castOf(p.unlit)}, the colour of the water.${p.unused ? " Filtered to match daylight, they would bring no red." : ""}`,
  }),
  lamps_only: (p) => ({
    text: `Keep light and subject at the distance where you set the white balance.${wide(p)}`,
    why: `The water between takes ${p.blue > p.red ? "blue" : "red"} most of all: at another distance that white balance no longer fits.`,
  }),
  lamps_reach: (p, u) => ({
    text: p.daylight
      ? `The video lights carry about ${depth(p.dark_m, u)}. What lies farther off has daylight alone: it comes out ${wholeStops(p.daylight.stops)} darker, in the colour of the water.`
      : `The video lights carry about ${depth(p.dark_m, u)}: what lies farther off stays black in the picture.`,
    why: "Their light thins out with distance, and the water takes its share on the way there and back.",
  }),
  mixing_zone: (p, u) => ({
    text: `From ${span(p.from_m, p.to_m, u)} video lights and daylight fight: use only one of them there.`,
    why: "No single white balance makes both neutral.",
  }),
};

const wide = (p: { haze?: { percent: number } }): string =>
  p.haze
    ? ` Hold the lights far from the lens and point them outwards: otherwise backscatter would be about ${brightness(p.haze.percent)} as bright as a grey subject.`
    : "";
