import type { NamedFilter, SummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { dialFNumber, settings } from "./dial.js";
import { filterName } from "./filter-name.js";
import { howOften, shown } from "./format.js";

/** The plan in a few sentences. */
export const summary: Texts<SummaryCodes, string> = {
  no_filter: () => "Mount no colour filter.",
  mount: (p) => `Mount ${filterName(p.filter)}.${tie(p.tie_with)}`,
  carry: (p) =>
    `Carry ${filterName(p.filter)} and use it from ${shown(p.from_m, 1)} to ${shown(p.to_m, 1)} m.${tie(p.tie_with)}`,
  too_bright: (p) =>
    `At ${shown(p.depth_m, 1)} m it is ${shown(p.excess_stops, 1)} stops too bright for these settings: ${
      p.f_number === undefined ? "" : `close down to f/${dialFNumber(p.f_number)} or `
    }use neutral density ${shown(p.density, 1)}.`,
  too_dark: (p) =>
    `At ${shown(p.depth_m, 1)} m it is ${shown(p.shortfall_stops, 1)} stops too dark for this camera.`,
  expose: ({ from, to }) =>
    to === undefined || settings(to) === settings(from)
      ? `Expose with ${settings(from)}.`
      : `Expose with ${settings(from)} at ${shown(from.depth_m, 1)} m, ${settings(to)} at ${shown(to.depth_m, 1)} m.`,
  balance: (p) =>
    `Balance on a card at the start${p.again > 0 ? ` and ${howOften(p.again)} more going down` : ""}.`,
  lamps_off: () => "Leave the lamps off: they would split the colours.",
  lamps_with_filter: () => "Put the filters on the lamps and balance to daylight.",
  lamps_lead: () => "Let the lamps lead and balance to them.",
  lamps_only: () => "Balance to the lamps on a card at working distance.",
  daylight_leads: () => "The lamps hardly show against daylight.",
};

const tie = (filter: NamedFilter | undefined): string =>
  filter === undefined ? "" : ` It is a near tie with ${filterName(filter)}.`;
