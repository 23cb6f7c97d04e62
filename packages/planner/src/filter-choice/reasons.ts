import { stopsToDensity } from "@sunfathom/optics";
import { FITS_WITHIN_STOPS } from "../camera/exposure-settings.js";
import { type Reason as CodedReason, reasonsOf } from "../codes/coded.js";
import type { FilterChoiceReasons } from "../codes/filter-choice.js";
import type { LightReasons } from "../codes/light.js";
import type { Conditions } from "../light/conditions.js";
import { redTrustedTo_m } from "../light/inelastic.js";
import { underwater } from "../light/underwater.js";
import { itemAt, lastOf, mapEach } from "../lists/non-empty.js";
import { lightReason } from "../reasons/light-reason.js";
import type { FilterChoiceFigures } from "../result/filter-choice.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { type Candidate, named } from "./candidates.js";
import { WORTHWHILE_DELTA_E00 } from "./decide.js";
import { type Judged, leastErrorAt } from "./merits.js";
import type { Search } from "./search.js";

type Reason = CodedReason<FilterChoiceReasons & LightReasons>;

const reason = reasonsOf<FilterChoiceReasons>();

/** From this mean colour error on, nothing on the lens makes colours right: a judgement. */
const HOPELESS_DELTA_E00 = 6;

interface Facts {
  conditions: Conditions;
  search: Search;
  answer: FilterChoiceFigures;
  advised: Judged;
  /** What would be mounted if light were no matter, where that is another filter. */
  moreLight: Candidate | undefined;
}

/** Why this filter, or none: what decides first. */
export function filterReasons(facts: Facts): Reason[] {
  const { conditions, search, answer } = facts;
  const reasons = [mainReason(facts), ...densityReasons(facts), ...rangeReasons(facts), balanceReason(facts)];
  if (conditions.daylight) reasons.push(...lightReasons(facts));
  const deepest = lastOf(answer.depths);
  if (answer.filter_kind !== "none") {
    // Below the depth where red is gone the filter is credited with nothing.
    const matters = answer.depths.filter((_, d) => !search.redIsGone[d]);
    const at = matters.at(-1) ?? deepest;
    reasons.push(
      reason("filter_adds_no_red", "computed", {
        depth_m: at.depth_m,
        with_share: at.advised_red_signal_above_600_nm_share,
        without_share: at.without_red_signal_above_600_nm_share,
      }),
    );
  }
  reasons.push(...redReasons(facts));
  const trusted_m = redTrustedTo_m(underwater(conditions, NOMINAL));
  if (trusted_m !== undefined && deepest.depth_m > trusted_m) {
    reasons.push(lightReason("red_not_only_transmitted", "computed", { depth_m: trusted_m }));
  }
  if (answer.verdict === "near_tie") {
    reasons.push(
      reason("near_tie", "computed", {
        probability: answer.runner_up.probability_better,
        runner_up: named(search.decision.runnerUp.candidate),
        loses_by: answer.runner_up.loses_by_delta_e00.likely,
        worthwhile: WORTHWHILE_DELTA_E00,
      }),
    );
  }
  if (answer.filter_kind === "red") reasons.push(reason("filter_trade_rule_blue", "common_practice"));
  if (answer.filter_kind === "magenta") reasons.push(reason("filter_trade_rule_green", "common_practice"));
  reasons.push(reason("filter_shape_assumed", "computed"));
  return reasons;
}

/** What else would do as well, and what holds the density. */
function densityReasons({ conditions, answer, advised, moreLight }: Facts): Reason[] {
  const reasons: Reason[] = [];
  const { as_good_from_density: from_density, as_good_to_density: to_density } = answer;
  if (from_density !== undefined && to_density !== undefined && to_density > from_density) {
    reasons.push(reason("densities_as_good", "computed", { from_density, to_density }));
  }
  if (moreLight) {
    const { iso, f_number } = lastOf(advised.merits).settings;
    reasons.push(
      reason("light_holds_density", "computed", {
        wanted: named(moreLight),
        depth_m: lastOf(answer.depths).depth_m,
        iso,
        f_number,
        shutter_s: conditions.scene.shutter_s,
      }),
    );
  }
  return reasons;
}

/** The shallowest depth at which a filter would seem to gain, though nothing of red is red behind it. */
function redReasons({ answer, search: { judged, redIsGone } }: Facts): Reason[] {
  for (const [d, { depth_m, without_colour_error_delta_e00 }] of answer.depths.entries()) {
    const { candidate, merits } = leastErrorAt(judged, d);
    const { delta_e00, red_above_600_nm_share: share } = itemAt(merits, d);
    if (redIsGone[d] && without_colour_error_delta_e00 - delta_e00 > WORTHWHILE_DELTA_E00)
      return [reason("no_red_to_gain", "computed", { filter: named(candidate), depth_m, share })];
  }
  return [];
}

/** Where a filter stops being worth it, and what to do where nothing on the lens helps. */
function rangeReasons({ conditions, answer }: Facts): Reason[] {
  const { scene, daylight } = conditions;
  const { serves_min_depth_m: from_m, serves_max_depth_m: to_m, change_depths_m } = answer;
  const error = answer.colour_error_delta_e00.likely;
  const reasons: Reason[] = [];
  if (answer.filter_kind !== "none" && from_m !== undefined && to_m !== undefined) {
    if (change_depths_m) reasons.push(reason("change_at_depth", "computed", { from_m, to_m }));
    else if (from_m > scene.min_depth_m || to_m < scene.max_depth_m) {
      reasons.push(reason("serves_part_of_range", "computed", { from_m, to_m }));
    }
  }
  const gaining = answer.depths.filter((d) => d.best_filter_kind !== "none");
  const [first] = gaining;
  const last = gaining.at(-1);
  if (answer.filter_kind === "none" && first && last && answer.depths.length > 1) {
    reasons.push(
      reason("part_would_gain", "computed", {
        kind: first.best_filter_kind,
        from_m: first.depth_m,
        to_m: last.depth_m,
      }),
    );
  }
  const peak = densityPeak(answer);
  if (peak) reasons.push(reason("denser_gains_nothing_below", "computed", peak));
  if (daylight && scene.lamps.length === 0 && error > HOPELESS_DELTA_E00) {
    reasons.push(reason("only_lamps_would_help", "computed", { error }));
  }
  return reasons;
}

/** A fall of the best density by less than this is within what the search resolves. */
const DENSITY_FALLS_BY = 0.1;

/** Depth below which the best density of the advised kind falls again, as light runs out; undefined where it does not in this range. */
function densityPeak({
  filter_kind,
  depths,
}: FilterChoiceFigures): { depth_m: number; density: number } | undefined {
  const best = mapEach(depths, (d) =>
    d.best_filter_kind === filter_kind ? (d.best_filter_density ?? 0) : 0,
  );
  const density = Math.max(...best);
  const depth_m = itemAt(depths, best.indexOf(density)).depth_m;
  return filter_kind !== "none" && density - lastOf(best) >= DENSITY_FALLS_BY
    ? { depth_m, density }
    : undefined;
}

function mainReason({ conditions, search: { decision }, answer }: Facts): Reason {
  const { scene, daylight } = conditions;
  if (!daylight) {
    const [lamp] = scene.lamps;
    return reason("lamps_are_the_only_light", "computed", lamp?.cct_K ? { lamp: { cct_K: lamp.cct_K } } : {});
  }
  if (answer.filter_kind !== "none") {
    return reason("filter_earns", "computed", {
      filter: named(decision.advised.candidate),
      min_m: scene.min_depth_m,
      max_m: scene.max_depth_m,
      with_e: answer.colour_error_delta_e00.likely,
      without_e: answer.colour_error_without_delta_e00.likely,
    });
  }
  if (!decision.bestFilter) return reason("no_filter_owned", "computed");
  return reason("no_filter_earns", "computed", {
    best: named(decision.bestFilter.candidate),
    best_change: decision.bestFilter.delta_e00 - answer.colour_error_without_delta_e00.likely,
    worthwhile: WORTHWHILE_DELTA_E00,
  });
}

function balanceReason({ answer, search: { judged } }: Facts): Reason {
  const first = answer.depths.find((d) => !d.without_balance_in_reach);
  if (!first) return reason("balance_in_reach_without", "computed");
  const { residual_stops } = lastOf(judged[0].merits).balance;
  const { depth_m } = first;
  const deepest_m = lastOf(answer.depths).depth_m;
  const shortfall = { depth_m, deepest_m, residual_stops };
  if (answer.filter_kind === "none") return reason("balance_out_of_reach", "computed", shortfall);
  const reached = answer.depths.filter((d) => d.advised_balance_in_reach).map((d) => d.depth_m);
  return reason("filter_brings_balance_into_reach", "computed", {
    ...shortfall,
    reach_from_m: reached[0] ?? 0,
    reach_to_m: reached[reached.length - 1] ?? 0,
  });
}

/** Judged at the shallow end for too much light and at the deep end for too little. */
function lightReasons({ search: { judged }, answer }: Facts): Reason[] {
  const without = judged[0].merits;
  const shallow = without[0];
  const deep = lastOf(without).settings;
  const at = {
    depth_m: lastOf(answer.depths).depth_m,
    f_number: deep.f_number,
    iso: deep.iso,
  };
  if (shallow.neutral_stops > FITS_WITHIN_STOPS) {
    return [
      reason("light_is_too_much", "computed", {
        depth_m: answer.depths[0].depth_m,
        excess_stops: shallow.neutral_stops,
        density: stopsToDensity(shallow.neutral_stops),
        iso: shallow.settings.iso,
        f_number: shallow.settings.f_number,
      }),
      reason("colour_filter_as_neutral", "computed"),
    ];
  }
  return [
    deep.at_lowest_iso
      ? reason("light_to_spare", "computed", at)
      : reason("light_has_run_out", "computed", { ...at, short_stops: -deep.off_by_stops }),
  ];
}
