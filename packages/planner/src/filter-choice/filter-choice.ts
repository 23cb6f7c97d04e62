import { integrateProduct, multiply, stopsToDensity, Y_BAR } from "@sunfathom/optics";
import { cameraState } from "../camera/camera-state.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { depthsOf } from "../light/depths.js";
import { requireLight } from "../light/require-light.js";
import { lightSources } from "../light/sources.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import { cautionsFor } from "../messages/cautions-for.js";
import { sunReasons } from "../messages/sun-reasons.js";
import type { FilterAtDepth, FilterChoiceAnswer, FilterChoiceFigures } from "../result/filter-choice.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, FILTER_CAUSES } from "../uncertainty/causes.js";
import { normalCdf } from "../uncertainty/normal.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { propagate, shareOfCauses, sigmaOf } from "../uncertainty/propagate.js";
import { CANDIDATES, type Candidate, candidateFilter, NO_FILTER } from "./candidates.js";
import { cheapest, costOf, decide } from "./decide.js";
import { type Merit, meritOf } from "./merit.js";
import { filterReasons } from "./reasons.js";

/** From this probability on that the runner-up is better, a choice is called a near tie. */
export const NEAR_TIE_FROM = 0.25;

/** Merits of some candidates at some depths, depth by depth. */
export function meritsOf(
  conditions: Conditions,
  nuisance: Nuisance,
  depths: readonly number[],
  candidates: readonly Candidate[],
): Merit[][] {
  const world = underwater(conditions, nuisance);
  const camera = cameraState(conditions.scene, nuisance);
  const filters = candidates.map((candidate) => candidateFilter(candidate, nuisance));
  return depths.map((depth_m) => {
    const stage = stageAt(world, depth_m);
    return filters.map((filter) => meritOf(stage, filter, camera));
  });
}

const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;
const sameCandidate = (a: Candidate, b: Candidate) => a.kind === b.kind && a.density === b.density;

/** Luminance that a candidate takes in the middle of the range, stops. */
function luminanceLoss(conditions: Conditions, nuisance: Nuisance, candidate: Candidate): number {
  const { scene } = conditions;
  const stage = stageAt(underwater(conditions, nuisance), (scene.min_depth_m + scene.max_depth_m) / 2);
  const seen = multiply(stage.subject, candidateFilter(candidate, nuisance));
  return Math.log2(integrateProduct(stage.subject, Y_BAR) / integrateProduct(seen, Y_BAR));
}

/**
 * Which filter to mount for a range of depths: none, red or magenta, and how dense, by the colour error that is left (see
 * `meritOf`), searched on the grid of `CANDIDATES` and averaged over seven depths.
 * @throws SceneProblem without any light, or for a sun below the model's domain.
 */
export function filterChoice(scene: Scene): FilterChoiceAnswer {
  const conditions = conditionsOf(scene);
  requireLight(conditions);
  const depths = depthsOf(scene);
  const nominal = meritsOf(conditions, NOMINAL, depths, CANDIDATES);
  const scored = CANDIDATES.map((candidate, c) => ({
    candidate,
    delta_e00: mean(nominal.map((m) => m[c].delta_e00)),
  }));
  const decision = decide(scored);
  const contenders = [decision.advised.candidate, decision.runnerUp.candidate, NO_FILTER];

  const advisedIsFilter = decision.advised.candidate.kind !== "none";
  const causes = [...causesOf(conditions), ...FILTER_CAUSES];
  const propagated = propagate((nuisance) => {
    const merits = meritsOf(conditions, nuisance, depths, contenders);
    const [advised, runnerUp, without] = contenders.map((_, c) => mean(merits.map((m) => m[c].delta_e00)));
    const loss = advisedIsFilter ? luminanceLoss(conditions, nuisance, decision.advised.candidate) : 0;
    return [advised, runnerUp, without, runnerUp - advised, loss];
  }, causes);
  const [advised, runnerUp, without, losesBy, loss] = propagated.estimates;
  const gap =
    costOf(decision.runnerUp.candidate, runnerUp.likely) - costOf(decision.advised.candidate, advised.likely);
  const probability_better = normalCdf(-gap / Math.max(1e-6, sigmaOf(propagated, 3)));

  const advisedIndex = CANDIDATES.findIndex((c) => sameCandidate(c, decision.advised.candidate));
  const perDepth = depths.map((depth_m, d) => atDepth(depth_m, nominal[d], advisedIndex));
  const served = perDepth.filter((d) => servesAt(d, advisedIsFilter));
  const answer: FilterChoiceFigures = {
    filter_kind: decision.advised.candidate.kind,
    ...densityOf(decision.advised.candidate),
    ...neutralDensity(nominal[0][advisedIndex]),
    verdict: probability_better >= NEAR_TIE_FROM ? "near_tie" : "clear",
    colour_error_delta_e00: advised,
    colour_error_without_delta_e00: without,
    runner_up: {
      filter_kind: decision.runnerUp.candidate.kind,
      ...densityOf(decision.runnerUp.candidate),
      colour_error_delta_e00: runnerUp,
      loses_by_delta_e00: losesBy,
      probability_better,
    },
    filter_loss_stops: loss,
    ...servedRange(served),
    depths: perDepth,
  };
  return {
    ...answer,
    reasons: [
      ...filterReasons({ conditions, decision, answer, withoutAtDepths: nominal.map((m) => m[0]) }),
      ...sunReasons(conditions),
    ],
    cautions: cautionsFor(scene, { filterAdvised: advisedIsFilter }),
    uncertainty: shareOfCauses(propagated, 3),
    sources: [
      ...new Set([
        ...lightSources(conditions),
        "filter_shapes",
        "filter_merit",
        "chart_24",
        "ciede2000",
        "camera_recording",
      ]),
    ],
  };
}

const densityOf = ({ kind, density }: Candidate): { filter_density?: number } =>
  kind === "none" ? {} : { filter_density: density };

function atDepth(depth_m: number, merits: readonly Merit[], advisedIndex: number): FilterAtDepth {
  const scored = CANDIDATES.map((candidate, c) => ({ candidate, delta_e00: merits[c].delta_e00 }));
  const best = cheapest(scored);
  const advised = merits[advisedIndex];
  const without = merits[0];
  return {
    depth_m,
    best_filter_kind: best.candidate.kind,
    ...(best.candidate.kind === "none" ? {} : { best_filter_density: best.candidate.density }),
    best_colour_error_delta_e00: best.delta_e00,
    advised_colour_error_delta_e00: advised.delta_e00,
    without_colour_error_delta_e00: without.delta_e00,
    advised_red_signal_above_600_nm_share: advised.red_above_600_nm_share,
    without_red_signal_above_600_nm_share: without.red_above_600_nm_share,
    advised_balance_in_reach: advised.balance.in_reach,
    without_balance_in_reach: without.balance.in_reach,
  };
}

/** Neutral density to add where the shallow end is too bright for the camera's limits. */
const neutralDensity = ({ excess_stops }: Merit): { neutral_density?: number } =>
  excess_stops > 0 ? { neutral_density: stopsToDensity(excess_stops) } : {};

/** A filter serves where it leaves less error than none; no filter serves where nothing is worth mounting. */
const servesAt = (d: FilterAtDepth, isFilter: boolean): boolean =>
  isFilter
    ? d.advised_colour_error_delta_e00 < d.without_colour_error_delta_e00
    : d.best_filter_kind === "none";

function servedRange(served: readonly FilterAtDepth[]): {
  serves_min_depth_m?: number;
  serves_max_depth_m?: number;
} {
  if (served.length === 0) return {};
  return { serves_min_depth_m: served[0].depth_m, serves_max_depth_m: served[served.length - 1].depth_m };
}
