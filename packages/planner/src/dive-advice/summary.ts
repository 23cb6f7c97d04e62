import { settings } from "../messages/dial.js";
import { LAMP_PLANS_EN, SUMMARY_EN as SAY } from "../messages/plan-en.js";
import type { Decisions } from "./decisions.js";
import { balancesDown, endOf, startOf } from "./legs.js";
import { tooBright } from "./too-bright.js";

function mountText({ filter, filterName: name, runnerUpName, legs }: Decisions): string {
  if (filter.filter_kind === "none") return SAY.no_filter();
  const tie = filter.verdict === "near_tie" ? { tie_with: runnerUpName } : {};
  if (legs.length === 1) return SAY.mount({ name, ...tie });
  const { scene } = legs.find((leg) => leg.filtered) ?? legs[0];
  return SAY.carry({ name, from_m: scene.min_depth_m, to_m: scene.max_depth_m, ...tie });
}

function exposeText({ legs, lampPlan }: Decisions): string {
  const first = startOf(legs);
  const last = endOf(legs);
  const bright = tooBright(first);
  if (bright) return SAY.too_bright(bright);
  if (last.verdict === "too_dark") {
    return SAY.too_dark({ depth_m: last.depth_m, shortfall_stops: last.shortfall_stops?.likely ?? 0 });
  }
  const alike = lampPlan === "lamps_only" || settings(first) === settings(last);
  return alike ? SAY.expose(first) : SAY.expose_from_to({ from: first, to: last });
}

function balanceText({ legs }: Decisions): string {
  if (legs[0].balance.method === "card_at_lamp_distance") return "";
  return SAY.balance({ again: balancesDown(legs).length - 1 });
}

/** The whole advice in a few sentences. */
export const summaryOf = (d: Decisions): string =>
  [mountText(d), exposeText(d), balanceText(d), LAMP_PLANS_EN[d.lampPlan]]
    .filter((part) => part !== "")
    .join(" ");
