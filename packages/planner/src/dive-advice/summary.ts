import { howOften, shown } from "../messages/format.js";
import type { LampPlan } from "../result/dive-advice.js";
import type { Decisions } from "./decisions.js";
import { filterName } from "./steps.js";

const LAMPS: Record<LampPlan, string> = {
  none: "",
  lamps_off: "Leave the lamps off: they would split the colours.",
  lamps_with_filter: "Put the filters on the lamps and balance to daylight.",
  lamps_lead: "Let the lamps lead and balance to them.",
  lamps_only: "Balance to the lamps on a card at working distance.",
  daylight_leads: "The lamps hardly show against daylight.",
};

function mountText(d: Decisions): string {
  if (d.filter.filter_kind === "none") return "Mount no colour filter.";
  return d.filterIn_m === undefined
    ? `Mount ${filterName(d)}.`
    : `Carry ${filterName(d)} and swing it in at ${shown(d.filterIn_m, 1)} m.`;
}

/** The whole advice in a few sentences. */
export function summaryOf(d: Decisions): string {
  const { filter, exposure, balance, lampPlan } = d;
  const first = (d.exposureBefore ?? exposure).depths[0];
  const last = exposure.depths[exposure.depths.length - 1];
  const tie = filter.verdict === "near_tie" ? " It is a near tie with the runner-up." : "";
  const mount = mountText(d);
  const at = (depth: typeof first) => `ISO ${shown(depth.iso)} at f/${shown(depth.f_number, 1)}`;
  const expose =
    last.verdict === "too_dark"
      ? `The deep end is ${shown(last.shortfall_stops?.likely ?? 0, 1)} stops too dark for this camera.`
      : exposure.depths.length > 1
        ? `Expose with ${at(first)} at the shallow end, ${at(last)} at the deep end.`
        : `Expose with ${at(first)}.`;
  const again = balance.balance_depths_descending_m.length - 1;
  const white =
    balance.method === "card_at_lamp_distance"
      ? ""
      : `Balance on a card at the start${again > 0 ? ` and ${howOften(again)} more going down` : ""}.`;
  return [mount + tie, expose, white, LAMPS[lampPlan]].filter((part) => part !== "").join(" ");
}
