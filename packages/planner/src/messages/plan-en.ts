import type { LampPlan } from "../result/dive-advice.js";
import { dialFNumber, settings } from "./dial.js";
import { howOften, shown } from "./format.js";

/** The plan in a few sentences. */
export const SUMMARY_EN = {
  no_filter: () => "Mount no colour filter.",
  mount: (p: { name: string; tie_with?: string }) => `Mount ${p.name}.${tie(p.tie_with)}`,
  carry: (p: { name: string; from_m: number; to_m: number; tie_with?: string }) =>
    `Carry ${p.name} and use it from ${shown(p.from_m, 1)} to ${shown(p.to_m, 1)} m.${tie(p.tie_with)}`,
  too_bright: (p: { depth_m: number; excess_stops: number; density: number; f_number?: number }) =>
    `At ${shown(p.depth_m, 1)} m it is ${shown(p.excess_stops, 1)} stops too bright for these settings: ${
      p.f_number === undefined ? "" : `close down to f/${dialFNumber(p.f_number)} or `
    }use neutral density ${shown(p.density, 1)}.`,
  too_dark: (p: { depth_m: number; shortfall_stops: number }) =>
    `At ${shown(p.depth_m, 1)} m it is ${shown(p.shortfall_stops, 1)} stops too dark for this camera.`,
  expose: (p: { iso: number; f_number: number }) => `Expose with ${settings(p)}.`,
  expose_from_to: (p: { from: Exposed; to: Exposed }) =>
    `Expose with ${settings(p.from)} at ${shown(p.from.depth_m, 1)} m, ${settings(p.to)} at ${shown(p.to.depth_m, 1)} m.`,
  balance: (p: { again: number }) =>
    `Balance on a card at the start${p.again > 0 ? ` and ${howOften(p.again)} more going down` : ""}.`,
} as const;

interface Exposed {
  depth_m: number;
  iso: number;
  f_number: number;
}

const tie = (name: string | undefined): string =>
  name === undefined ? "" : ` It is a near tie with ${name}.`;

export const LAMP_PLANS_EN: Record<LampPlan, string> = {
  none: "",
  lamps_off: "Leave the lamps off: they would split the colours.",
  lamps_with_filter: "Put the filters on the lamps and balance to daylight.",
  lamps_lead: "Let the lamps lead and balance to them.",
  lamps_only: "Balance to the lamps on a card at working distance.",
  daylight_leads: "The lamps hardly show against daylight.",
};

/** What to take from the shelf, and why. */
export const TAKE_EN = {
  lens_filter: (p: { name: string }) => ({
    what: p.name,
    why: "It leaves the least colour error of the filters owned.",
  }),
  neutral_density: (p: { density: number }) => ({
    what: `a neutral filter of density ${shown(p.density, 1)}`,
    why: "The shallow end is too bright for the camera's limits.",
  }),
  lamp_filters: () => ({
    what: "lamp filters, one for each lamp",
    why: "They match the lamps to daylight at depth.",
  }),
  lamp_filters_lacking: (p: { kind: string; density: number }) => ({
    what: `a ${p.kind} lamp filter of density ${shown(p.density, 2)} for each lamp`,
    why: "The kit has none that matches: with it the lamps could stay on.",
  }),
  lamp: () => ({ what: "a lamp", why: "The plan uses lamps." }),
  card: () => ({ what: "a grey or white card", why: "Every balance in the plan is made on it." }),
} as const;
