import { type Reason as CodedReason, reasonsOf } from "../codes/coded.js";
import type { FilterMainReasons } from "../codes/filter-choice.js";
import { depthsOf } from "../light/depths.js";
import { isOutOfSight, visibilityOf_m } from "../light/sight.js";
import { itemAt, lastOf } from "../lists/non-empty.js";
import { named } from "./candidates.js";
import type { Choice } from "./choose.js";
import { finishOf, leastErrorAt } from "./merits.js";
import { type UnderFinish, underOtherFinishes } from "./other-finishes.js";

type Reason = CodedReason<FilterMainReasons>;

const reason = reasonsOf<FilterMainReasons>();

/** Where even a grade profiled on a chart leaves this mean colour error, nothing on the lens makes colours right: a judgement. */
const HOPELESS_DELTA_E00 = 6;

/**
 * Why this filter, or none, and where: what decides.
 * @param otherwise what other finishes make of it, where it was asked already
 */
export function mainReasons(choice: Choice, otherwise?: readonly UnderFinish[]): Reason[] {
  const { search, answer } = choice;
  const reasons = [mainReason(choice)];
  const { as_good_from_density: from_density, as_good_to_density: to_density } = answer;
  if (from_density !== undefined && to_density !== undefined && to_density > from_density) {
    reasons.push(reason("densities_as_good", "judgement", { from_density, to_density }));
  }
  reasons.push(...rangeReasons(choice, otherwise));
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
  reasons.push(...redReasons(choice));
  if (answer.verdict === "near_tie") {
    reasons.push(
      reason("near_tie", "computed", {
        probability: answer.runner_up.probability_better,
        runner_up: named(search.decision.runnerUp.candidate),
        loses_by: answer.runner_up.loses_by_delta_e00.likely,
        worthwhile: search.worthwhile,
      }),
    );
  }
  return reasons;
}

/** Where a filter stops being worth it, and what to do where nothing on the lens helps. */
function rangeReasons(choice: Choice, otherwise: readonly UnderFinish[] | undefined): Reason[] {
  const { conditions, answer, search } = choice;
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
  if (
    search.mayGain &&
    daylight &&
    scene.lamps.length === 0 &&
    error > HOPELESS_DELTA_E00 &&
    isHopeless(choice, otherwise)
  ) {
    reasons.push(reason("only_lamps_would_help", "judgement", { error }));
  }
  return reasons;
}

/** Whether a profiled grade, the best that can be done afterwards, leaves too much with the advised choice and without it. */
function isHopeless({ conditions, search }: Choice, otherwise: readonly UnderFinish[] | undefined): boolean {
  const { scene } = conditions;
  if (finishOf(scene) === "matched") return true;
  const { decision, redIsGone, changeable } = search;
  const compared = {
    advised: decision.advised.candidate,
    runnerUp: decision.runnerUp.candidate,
    redIsGone,
    changeable,
  };
  const finished = otherwise ?? underOtherFinishes(conditions, depthsOf(scene), compared, ["matched"]);
  const graded = finished.filter(({ answer }) => answer.finish === "matched");
  return graded.every(
    ({ answer }) =>
      Math.min(answer.advised_colour_error_delta_e00, answer.without_colour_error_delta_e00) >
      HOPELESS_DELTA_E00,
  );
}

/** The shallowest depth at which a filter would seem to gain, though nothing of red is red behind it. */
function redReasons({ answer, search: { judged, worthwhile, redIsGone } }: Choice): Reason[] {
  for (const [d, { depth_m, without_colour_error_delta_e00 }] of answer.depths.entries()) {
    const { candidate, merits } = leastErrorAt(judged, d);
    const { delta_e00, red_above_600_nm_share: share } = itemAt(merits, d);
    if (redIsGone[d] && without_colour_error_delta_e00 - delta_e00 > worthwhile)
      return [reason("no_red_to_gain", "computed", { filter: named(candidate), depth_m, share })];
  }
  return [];
}

function mainReason({ conditions, search: { decision, worthwhile }, answer }: Choice): Reason {
  const { scene, daylight } = conditions;
  if (!daylight && answer.filter_kind === "none") {
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
  if (isOutOfSight(conditions)) {
    const { subject_distance_m: distance_m } = scene;
    return reason("subject_out_of_sight", "computed", {
      distance_m,
      visibility_m: visibilityOf_m(conditions),
    });
  }
  return reason("no_filter_earns", "judgement", {
    best: named(decision.bestFilter.candidate),
    best_change: decision.bestFilter.delta_e00 - answer.colour_error_without_delta_e00.likely,
    worthwhile,
  });
}
