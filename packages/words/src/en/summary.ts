import type { LampPlan, SummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { setting } from "./dial.js";
import { choiceOf, filterName } from "./filter-name.js";
import { depth, howOften, kelvin, span, stops } from "./format.js";

const LAMPS: Readonly<Record<LampPlan, string>> = {
  none: "no video lights",
  lamps_off: "video lights off",
  lamps_with_filter: "filtered video lights",
  lamps_lead: "video lights on, white balance set in their light",
  lamps_only: "video lights alone",
  daylight_leads: "video lights on, white balance set in daylight",
};

/** The plan in a few sentences. */
export const summary: Texts<SummaryCodes, string> = {
  no_filter: () => "Mount no colour filter.",
  mount: (p) => `Mount ${filterName(p.filter)}.`,
  carry: (p, u) => `Carry ${filterName(p.filter)} and use it from ${span(p.from_m, p.to_m, u)}.`,
  too_dark: (p, u) => `At ${depth(p.depth_m, u)} it is ${stops(p.shortfall_stops)} too dark.`,
  expose: ({ from, to }, u) =>
    to === undefined || setting(to) === setting(from)
      ? `Expose with ${setting(from)}.`
      : `At ${depth(from.depth_m, u)} expose with ${setting(from)}, at ${depth(to.depth_m, u)} with ${setting(to)}.`,
  balance: (p) =>
    `White-balance on a card at the start${p.again > 0 ? ` and ${howOften(p.again)} more going down` : ""}.`,
  expose_by_itself: () => "Leave the exposure to the camera.",
  balance_by_itself: () => "Leave the white balance on automatic.",
  balance_in_kelvin: (p) => `Set the white balance to ${kelvin(p.cct_K)} K.`,
  lamps_off: () => "Leave the video lights off: their colour would not match daylight.",
  lamps_with_filter: () => "Put the filters on the video lights and set the white balance in daylight.",
  lamps_lead: () => "Let the video lights lead and set the white balance in their light.",
  lamps_only: () => "Set the white balance on a card in the light of the video lights, at working distance.",
  daylight_leads: () => "The video lights hardly show against daylight.",
  close_filter: (p) => `A close call: ${choiceOf(p.filter)} would do about as well.`,
  close_lamps: (p) =>
    `A close call: ${LAMPS[p.plan]}${p.filter ? `, with ${filterName(p.filter)} on the lens,` : ""} would do about as well.`,
};
