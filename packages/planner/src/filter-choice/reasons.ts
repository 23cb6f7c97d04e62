import { stopsToDensity } from "@sunfathom/optics";
import type { Conditions } from "../light/conditions.js";
import { reason } from "../messages/say.js";
import type { Reason } from "../result/common.js";
import type { FilterChoiceFigures } from "../result/filter-choice.js";
import { nameOf } from "./candidates.js";
import { type Decision, WORTHWHILE_DELTA_E00 } from "./decide.js";
import type { Merit } from "./merit.js";

interface Facts {
  conditions: Conditions;
  decision: Decision;
  answer: FilterChoiceFigures;
  /** The camera without a filter, depth by depth, shallow first. */
  withoutAtDepths: readonly Merit[];
}

/** Why this filter, or none: what decides first. */
export function filterReasons(facts: Facts): Reason[] {
  const { conditions, decision, answer } = facts;
  const reasons = [mainReason(facts), balanceReason(facts)];
  if (conditions.daylight) reasons.push(lightReason(facts));
  const deepest = answer.depths[answer.depths.length - 1];
  if (answer.filter_kind !== "none") {
    reasons.push(
      reason("filter_adds_no_red", "computed", {
        with_share: deepest.advised_red_signal_above_600_nm_share,
        without_share: deepest.without_red_signal_above_600_nm_share,
      }),
    );
  }
  if (answer.verdict === "near_tie") {
    reasons.push(
      reason("near_tie", "computed", {
        probability: answer.runner_up.probability_better,
        runner_up: nameOf(decision.runnerUp.candidate),
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

function mainReason({ conditions, decision, answer }: Facts): Reason {
  const { scene, daylight } = conditions;
  if (!daylight) {
    const [lamp] = scene.lamps;
    const cct_text = lamp?.cct_K === undefined ? "" : `, about ${lamp.cct_K} K at the lamp`;
    return reason("lamps_are_the_only_light", "computed", { cct_text });
  }
  if (answer.filter_kind !== "none") {
    return reason("filter_earns", "computed", {
      kind: answer.filter_kind,
      density: decision.advised.candidate.density,
      min_m: scene.min_depth_m,
      max_m: scene.max_depth_m,
      with_e: answer.colour_error_delta_e00.likely,
      without_e: answer.colour_error_without_delta_e00.likely,
    });
  }
  return reason("no_filter_earns", "computed", {
    best_kind: nameOf(decision.bestFilter.candidate),
    best_gain: answer.colour_error_without_delta_e00.likely - decision.bestFilter.delta_e00,
    worthwhile: WORTHWHILE_DELTA_E00,
  });
}

function balanceReason({ answer, withoutAtDepths }: Facts): Reason {
  const first = answer.depths.find((d) => !d.without_balance_in_reach);
  if (!first) return reason("balance_in_reach_without", "computed");
  const { residual_stops } = withoutAtDepths[withoutAtDepths.length - 1].balance;
  const code = answer.filter_kind === "none" ? "balance_out_of_reach" : "filter_brings_balance_into_reach";
  return reason(code, "computed", { depth_m: first.depth_m, residual_stops });
}

/** Judged at the shallow end for too much light and at the deep end for too little. */
function lightReason({ withoutAtDepths }: Facts): Reason {
  const shallow = withoutAtDepths[0];
  const deep = withoutAtDepths[withoutAtDepths.length - 1].settings;
  if (shallow.excess_stops > 0) {
    return reason("light_is_too_much", "computed", {
      excess_stops: shallow.excess_stops,
      density: stopsToDensity(shallow.excess_stops),
    });
  }
  return deep.at_lowest_iso
    ? reason("light_to_spare", "computed", { f_number: deep.f_number, iso: deep.iso })
    : reason("light_has_run_out", "computed", { iso: deep.iso, short_stops: -deep.off_by_stops });
}
