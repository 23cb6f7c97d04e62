import { type Coded, codesOf } from "../codes/coded.js";
import type { Exposed, SummaryCodes } from "../codes/summary.js";
import type { ExposureAtDepth } from "../result/exposure-loss.js";
import type { Decisions } from "./decisions.js";
import { balancesDown, endOf, startOf } from "./legs.js";
import { tooBright } from "./too-bright.js";

type Part = Coded<SummaryCodes>;

const say = codesOf<SummaryCodes>();

function mountPart({ filter, filterNamed, runnerUpNamed, legs }: Decisions): Part {
  if (filter.filter_kind === "none") return say("no_filter");
  const tie = filter.verdict === "near_tie" ? { tie_with: runnerUpNamed } : {};
  if (legs.length === 1) return say("mount", { filter: filterNamed, ...tie });
  const { scene } = legs.find((leg) => leg.filtered) ?? legs[0];
  const range = { from_m: scene.min_depth_m, to_m: scene.max_depth_m };
  return say("carry", { filter: filterNamed, ...range, ...tie });
}

const exposed = ({ depth_m, iso, f_number }: ExposureAtDepth): Exposed => ({ depth_m, iso, f_number });

function exposePart({ legs, lampPlan }: Decisions): Part {
  const first = startOf(legs);
  const last = endOf(legs);
  const bright = tooBright(first);
  if (bright) return say("too_bright", bright);
  if (last.verdict === "too_dark") {
    return say("too_dark", { depth_m: last.depth_m, shortfall_stops: last.shortfall_stops?.likely ?? 0 });
  }
  const from = exposed(first);
  return say("expose", lampPlan === "lamps_only" ? { from } : { from, to: exposed(last) });
}

const balanceParts = ({ legs }: Decisions): Part[] =>
  legs[0].balance.method === "card_at_lamp_distance"
    ? []
    : [say("balance", { again: balancesDown(legs).length - 1 })];

/** The whole advice in a few sentences. */
export const summaryOf = (d: Decisions): Part[] => [
  mountPart(d),
  exposePart(d),
  ...balanceParts(d),
  ...(d.lampPlan === "none" ? [] : [say(d.lampPlan)]),
];
