import { type Coded, codesOf } from "../codes/coded.js";
import type { Exposed, SummaryCodes } from "../codes/summary.js";
import type { Decisions } from "./decisions.js";
import { DARKER_FROM_STOPS, endOfPlan, opensBy, startOfPlan } from "./exposure-plan.js";
import { balancesDown } from "./legs.js";
import type { Station } from "./station.js";

type Part = Coded<SummaryCodes>;

const say = codesOf<SummaryCodes>();

function mountPart({ filter, filterNamed, legs }: Decisions): Part {
  if (filter.filter_kind === "none") return say("no_filter");
  if (legs.length === 1) return say("mount", { filter: filterNamed });
  const { top_m, bottom_m } = legs.find((leg) => leg.filtered) ?? legs[0];
  return say("carry", { filter: filterNamed, from_m: top_m, to_m: bottom_m });
}

const exposed = ({ leg, setting }: Station, end: "top_m" | "bottom_m"): Exposed => ({
  ...setting,
  depth_m: leg[end],
});

function exposePart({ exposure, lampPlan, scene }: Decisions): Part {
  const [first, last] = [startOfPlan(exposure), endOfPlan(exposure)];
  const { verdict, shortfall_stops } = last.exposure;
  if (verdict === "too_dark") {
    return say("too_dark", { depth_m: last.leg.bottom_m, shortfall_stops: shortfall_stops?.likely ?? 0 });
  }
  if (scene.exposure_mode === "auto") return say("expose_by_itself");
  const from = exposed(first, "top_m");
  const stops = opensBy(first.setting, last.setting, scene.shutter_s);
  const isKept = lampPlan === "lamps_only" || Math.abs(stops) <= DARKER_FROM_STOPS;
  return say("expose", isKept ? { from } : { from, to: exposed(last, "bottom_m") });
}

function balanceParts({ legs, scene: { white_balance_kelvin_K: cct_K } }: Decisions): Part[] {
  const { method } = legs[0].balance;
  if (method === "card_at_lamp_distance") return [];
  if (method === "auto") return [say("balance_by_itself")];
  if (method === "kelvin" && cct_K !== undefined) return [say("balance_in_kelvin", { cct_K })];
  return [say("balance", { again: balancesDown(legs).length - 1 })];
}

/** The whole advice in a few sentences. */
export const summaryOf = (d: Decisions): Part[] => [
  mountPart(d),
  exposePart(d),
  ...balanceParts(d),
  ...(d.lampPlan === "none" ? [] : [say(d.lampPlan)]),
  ...d.closeCalls,
];
