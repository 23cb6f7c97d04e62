import { settings } from "../messages/dial.js";
import { shown } from "../messages/format.js";
import type { LampPlan } from "../result/dive-advice.js";
import type { Decisions } from "./decisions.js";
import { balancesDown, endOf, startOf } from "./legs.js";

const LAMPS: Record<LampPlan, string> = {
  none: "",
  lamps_off: "Leave the lamps off: they would split the colours.",
  lamps_with_filter: "Put the filters on the lamps and balance to daylight.",
  lamps_lead: "Let the lamps lead and balance to them.",
  lamps_only: "Balance to the lamps on a card at working distance.",
  daylight_leads: "The lamps hardly show against daylight.",
};

function mountText({ filter, filterName, legs }: Decisions): string {
  if (filter.filter_kind === "none") return "Mount no colour filter.";
  const tie = filter.verdict === "near_tie" ? " It is a near tie with the runner-up." : "";
  if (legs.length === 1) return `Mount ${filterName}.${tie}`;
  const { scene } = legs.find((leg) => leg.filtered) ?? legs[0];
  return `Carry ${filterName} and use it from ${shown(scene.min_depth_m, 1)} to ${shown(scene.max_depth_m, 1)} m.${tie}`;
}

function exposeText({ legs, lampPlan }: Decisions): string {
  const first = startOf(legs);
  const last = endOf(legs);
  if (first.verdict === "too_bright") {
    const { excess_stops, f_number_needed, neutral_density_needed } = first;
    return `At ${shown(first.depth_m, 1)} m it is ${shown(excess_stops?.likely ?? 0, 1)} stops too bright for these settings: close down to f/${shown(f_number_needed ?? 0, 1)} or use neutral density ${shown(neutral_density_needed ?? 0, 1)}.`;
  }
  if (last.verdict === "too_dark") {
    return `At ${shown(last.depth_m, 1)} m it is ${shown(last.shortfall_stops?.likely ?? 0, 1)} stops too dark for this camera.`;
  }
  const alike = lampPlan === "lamps_only" || settings(first) === settings(last);
  return alike
    ? `Expose with ${settings(first)}.`
    : `Expose with ${settings(first)} at ${shown(first.depth_m, 1)} m, ${settings(last)} at ${shown(last.depth_m, 1)} m.`;
}

function balanceText({ legs }: Decisions): string {
  if (legs[0].balance.method === "card_at_lamp_distance") return "";
  const more = balancesDown(legs).length - 1;
  return `Balance on a card at the start${more > 0 ? ` and ${more === 1 ? "once" : `${more} times`} more going down` : ""}.`;
}

/** The whole advice in a few sentences. */
export const summaryOf = (d: Decisions): string =>
  [mountText(d), exposeText(d), balanceText(d), LAMPS[d.lampPlan]].filter((part) => part !== "").join(" ");
