import type { SummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { setting } from "./dial.js";
import { choiceOf, filterName } from "./filter-name.js";
import { depth, howOften } from "./format.js";
import { lampSummary } from "./lamp-summary.js";
import { summaryBeside } from "./summary-beside.js";

/** The plan in a few sentences. */
export const summary: Texts<SummaryCodes, string> = {
  ...lampSummary,
  ...summaryBeside,
  no_filter: () => "Mount no colour filter.",
  mount: (p) => `Mount ${filterName(p.filter)}.`,
  expose: ({ from, to }, u) =>
    to === undefined || setting(to) === setting(from)
      ? `Expose with ${setting(from)}.`
      : `At ${depth(from.depth_m, u)} expose with ${setting(from)}, at ${depth(to.depth_m, u)} with ${setting(to)}.`,
  balance: (p) =>
    `White-balance on a card at the start${p.again > 0 ? ` and ${howOften(p.again)} more going down` : ""}.`,
  close_filter: (p) => `A close call: ${choiceOf(p.filter)} would do about as well.`,
};
