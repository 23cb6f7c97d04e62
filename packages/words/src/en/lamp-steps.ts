import type { LampStepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts, TextUnits } from "../problems/texts.js";
import { textOf } from "../text-of.js";
import { filterName, takeOff } from "./filter-name.js";
import { brightness, castOf, depth, distance, redder, shown, span, stops } from "./format.js";
import { waysOut } from "./ways-out.js";

/** English texts of what is done with the video lights, and why. */
export const lampSteps: Texts<LampStepCodes, StepText> = {
  check_lamps: (p, u) => ({
    text: CHECK_LIGHTS,
    why: lightNeeded(p, u),
  }),
  filter_lamps: (p, u) => ({
    text: `${takeOff(p)}Put ${filterName(p.filter)} on each video light.${checked(p)}`,
    why: `It matches their light to daylight at depth and leaves ${castOf(p.left)}.${needed(p, u)}`,
  }),
  keep_lamp_filters: (p, u) => ({
    text: `Leave ${filterName(p.filter)} on the video lights.${checked(p)}`,
    why: `With it their light shows ${castOf(p.left)} against daylight.${needed(p, u)}`,
  }),
  bare_lamps: (p, u) => ({
    text: `Take ${filterName(p.filter)} off the video lights.${checked(p)}`,
    why: `The lights lead here: there is no daylight to match, and the filter costs light.${needed(p, u)}`,
  }),
  lamps_off: (p, u) => ({
    text: `Leave the video lights switched off, and on the rig.${p.fitted ? ` They have ${filterName(p.fitted)} on now.` : ""}${p.other ? ` If you want them on: ${textOf(waysOut, p.other.way, u)}` : ""}`,
    why: `Balanced to daylight, whatever they reach would show ${castOf(p.split)}, ${redder(p.red_excess)}. Without them the subject loses ${stops(p.cost)}.${p.other ? ` The other way leaves ${castOf(p.other.left)}.` : ""}`,
  }),
  lamps_from: (p, u) => ({
    text: `From ${depth(p.depth_m, u)} down you can switch them on: set a new white balance on a card in their light.`,
    why: "There your video lights outshine daylight on the subject.",
  }),
  lamps_lead: (p) => ({
    text: `Switch the video lights on and keep the subject in their light.${wide(p)}`,
    why: `On the subject they outshine daylight by ${stops(p.green)} in green.`,
  }),
  lamps_hardly_show: (p) => ({
    text: p.haze
      ? "Switch the video lights off: they would show little but backscatter."
      : "You can leave the video lights on.",
    why: `Daylight outshines the video lights by ${stops(-p.green)} in green: they hardly show.`,
  }),
  lamps_only: (p) => ({
    text: `Keep light and subject at the distance where you set the white balance.${wide(p)}`,
    why: `The water between costs ${stops(p.red)} of red, ${stops(p.green)} of green and ${stops(p.blue)} of blue.`,
  }),
  mixing_zone: (p, u) => ({
    text: `From ${span(p.from_m, p.to_m, u)} video lights and daylight fight: use only one of them there.`,
    why: "No single white balance makes both neutral.",
  }),
};

const CHECK_LIGHTS = "Charge and check the video lights; test them in water, not in air.";
const lightNeeded = (p: { lux: number; distance_m: number }, u?: TextUnits): string =>
  `You need about ${shown(Number(p.lux.toPrecision(2)))} lx on the subject at ${distance(p.distance_m, u)}.`;
/** The same beside something else that is done with them. */
const checked = ({ check }: { check?: object }): string => (check ? ` ${CHECK_LIGHTS}` : "");
const needed = ({ check }: { check?: { lux: number; distance_m: number } }, u?: TextUnits): string =>
  check ? ` ${lightNeeded(check, u)}` : "";

const wide = (p: { haze?: { percent: number } }): string =>
  p.haze
    ? ` Hold the lights far from the lens and point them outwards, so that only the edge of the beam reaches the subject: backscatter would be about ${brightness(p.haze.percent)} as bright as a grey subject.`
    : "";
