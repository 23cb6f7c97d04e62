import { integrateProduct, multiply, stopsToDensity, Y_BAR } from "@sunfathom/optics";
import { FITS_WITHIN_STOPS } from "../camera/exposure-settings.js";
import { cautionsFor, filterAdvice } from "../cautions/cautions-for.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { curveOfKit } from "../light/curve-of-kit.js";
import { depthsOf } from "../light/depths.js";
import { measuredCurve } from "../light/measured-curve.js";
import { requireLight, requireSeenThrough } from "../light/require-light.js";
import { lightSources } from "../light/sources.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import { itemAt, lastOf, mapEach, type NonEmpty } from "../lists/non-empty.js";
import { sunReasons } from "../reasons/sun-reasons.js";
import type { Estimate } from "../result/common.js";
import type { FilterAtDepth, FilterChoiceAnswer, FilterChoiceFigures } from "../result/filter-choice.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, FILTER_CAUSES } from "../uncertainty/causes.js";
import { normalCdf } from "../uncertainty/normal.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { mapRising } from "../uncertainty/percentiles.js";
import { propagate, shareOfCauses, sigmaOf } from "../uncertainty/propagate.js";
import { type Candidate, candidateFilter, candidatesFor, finerThan, NO_FILTER } from "./candidates.js";
import { cheapest, costOf, type Decision, decide } from "./decide.js";
import type { Merit } from "./merit.js";
import { type Judged, judge, rangeError } from "./merits.js";
import { filterReasons } from "./reasons.js";
import { servedBy } from "./served.js";

/** From this probability on that the runner-up is better, a choice is called a near tie. */
const NEAR_TIE_FROM = 0.25;

const SOURCES = [
  "filter_shapes",
  "filter_merit",
  "chart_24",
  "ciede2000",
  "camera_recording",
  "port_radiance",
];

/** Luminance that a candidate takes in the middle of the range, stops. */
function luminanceLoss(conditions: Conditions, nuisance: Nuisance, candidate: Candidate): number {
  const { scene } = conditions;
  const stage = stageAt(underwater(conditions, nuisance), (scene.min_depth_m + scene.max_depth_m) / 2);
  const seen = multiply(stage.subject, candidateFilter(candidate, nuisance));
  return Math.log2(integrateProduct(stage.subject, Y_BAR) / integrateProduct(seen, Y_BAR));
}

interface Search {
  /** Every candidate that was tried; the first is no filter. */
  judged: Readonly<NonEmpty<Judged>>;
  decision: Decision;
}

/** Searches the candidates and then, on the grid, the densities around the best of them. */
function search(conditions: Conditions, depths: NonEmpty<number>, changeable: boolean): Search {
  const judged = judge(conditions, NOMINAL, depths, candidatesFor(conditions.scene));
  const scoreAll = (all: readonly Judged[]) =>
    all.map((j) => ({ candidate: j.candidate, delta_e00: rangeError(j, judged[0], changeable) }));
  const rough = decide(scoreAll(judged));
  const finer = rough.bestFilter ? finerThan(rough.bestFilter.candidate) : [];
  const all: NonEmpty<Judged> = [...judged, ...judge(conditions, NOMINAL, depths, finer)];
  return { judged: all, decision: decide(scoreAll(all)) };
}

/**
 * One filter of a kit that passes nothing is a slip in its data, and refused by its place: left out in silence, it would
 * never be put right.
 * @throws SceneProblem for the first such filter
 */
function requireSeenThroughKit(conditions: Conditions): void {
  for (const [index, { item, filter_transmittance }] of (conditions.scene.kit ?? []).entries()) {
    if (item === "lens_filter" && filter_transmittance)
      requireSeenThrough(conditions, measuredCurve(filter_transmittance), curveOfKit(index));
  }
}

/**
 * Which filter to mount for a range of depths: none, red or magenta, and how dense, by the colour error that is left (see
 * `meritOf`), searched on a stated grid of kinds and densities, or among the filters of the scene's kit, over seven depths.
 * @throws SceneProblem without any light, or for a sun or water outside the model's domain.
 */
export function filterChoice(scene: Scene): FilterChoiceAnswer {
  const conditions = conditionsOf(scene);
  requireLight(conditions);
  requireSeenThroughKit(conditions);
  const depths = depthsOf(scene);
  const changeable = scene.filter_change_underwater !== "none";
  const { judged, decision } = search(conditions, depths, changeable);
  const advised = decision.advised.candidate;
  const runnerUp = decision.runnerUp.candidate;
  const isFilter = advised.kind !== "none";

  const propagated = propagate(
    (nuisance) => {
      const [without, first, second] = judge(conditions, nuisance, depths, [NO_FILTER, advised, runnerUp]);
      const error = (judged: Judged) => rangeError(judged, without, changeable);
      const [advisedError, runnerUpError] = [error(first), error(second)];
      return {
        advisedError,
        runnerUpError,
        withoutError: error(without),
        losesBy: runnerUpError - advisedError,
        loss: isFilter ? luminanceLoss(conditions, nuisance, advised) : 0,
      };
    },
    [...causesOf(conditions), ...FILTER_CAUSES],
  );
  const { advisedError, runnerUpError, withoutError, losesBy, loss } = propagated.estimates;
  const gap = costOf(runnerUp, runnerUpError.likely) - costOf(advised, advisedError.likely);
  const probability_better =
    runnerUp === advised
      ? 0
      : normalCdf(
          -gap /
            Math.max(
              1e-6,
              sigmaOf(propagated, (figures) => figures.losesBy),
            ),
        );

  const of = (candidate: Candidate): Judged => judged.find((j) => j.candidate === candidate) ?? judged[0];
  const answer: FilterChoiceFigures = {
    filter_kind: advised.kind,
    ...described(advised),
    ...neutralDensity(of(advised).merits[0]),
    verdict: probability_better >= NEAR_TIE_FROM ? "near_tie" : "clear",
    colour_error_delta_e00: atLeastZero(advisedError),
    colour_error_without_delta_e00: atLeastZero(withoutError),
    runner_up: {
      filter_kind: runnerUp.kind,
      ...described(runnerUp),
      colour_error_delta_e00: atLeastZero(runnerUpError),
      loses_by_delta_e00: losesBy,
      probability_better,
    },
    filter_loss_stops: loss,
    ...servedAnswer(
      depths,
      of(advised),
      isFilter ? judged[0] : of(decision.bestFilter?.candidate ?? NO_FILTER),
      changeable && isFilter,
    ),
    depths: mapEach(depths, (depth_m, d) => atDepth(depth_m, d, judged, of(advised))),
  };
  const reasons = [
    ...filterReasons({ conditions, decision, answer, without: judged[0].merits }),
    ...sunReasons(conditions),
  ];
  const uncertainty = shareOfCauses(propagated, (figures) =>
    runnerUp === advised ? figures.advisedError : figures.losesBy,
  );
  return {
    ...answer,
    reasons,
    cautions: cautionsFor(scene, { reasons, uncertainty, advises: isFilter ? [filterAdvice(scene)] : [] }),
    uncertainty,
    sources: [...new Set([...lightSources(conditions), ...SOURCES])],
  };
}

const described = ({ kind, density, id }: Candidate): { filter_density?: number; filter_id?: string } => ({
  ...(kind === "none" || density === undefined ? {} : { filter_density: density }),
  ...(id === undefined ? {} : { filter_id: id }),
});

function atDepth(
  depth_m: number,
  d: number,
  judged: Readonly<NonEmpty<Judged>>,
  advised: Judged,
): FilterAtDepth {
  const best = cheapest(
    judged.map(({ candidate, merits }) => ({ candidate, delta_e00: itemAt(merits, d).delta_e00 })),
  );
  const chosen = itemAt(advised.merits, d);
  const without = itemAt(judged[0].merits, d);
  const { filter_density } = described(best.candidate);
  return {
    depth_m,
    best_filter_kind: best.candidate.kind,
    ...(filter_density === undefined ? {} : { best_filter_density: filter_density }),
    best_colour_error_delta_e00: best.delta_e00,
    advised_colour_error_delta_e00: chosen.delta_e00,
    without_colour_error_delta_e00: without.delta_e00,
    advised_red_signal_above_600_nm_share: chosen.red_above_600_nm_share,
    without_red_signal_above_600_nm_share: without.red_above_600_nm_share,
    advised_balance_in_reach: chosen.balance.in_reach,
    without_balance_in_reach: without.balance.in_reach,
  };
}

/** A difference of colours is none below zero, however wide its spread. */
const atLeastZero = (e: Estimate): Estimate => mapRising(e, (x) => Math.max(0, x));

/** Neutral density to add where the shallow end is too bright for the camera's limits. */
const neutralDensity = ({ neutral_stops }: Merit): { neutral_density?: number } =>
  neutral_stops > FITS_WITHIN_STOPS ? { neutral_density: stopsToDensity(neutral_stops) } : {};

/** Where the advised choice beats its rival, and where to change if the mount allows it. */
function servedAnswer(
  depths: Readonly<NonEmpty<number>>,
  advised: Judged,
  rival: Judged,
  changeable: boolean,
): Pick<FilterChoiceFigures, "serves_min_depth_m" | "serves_max_depth_m" | "change_depths_m"> {
  const served =
    advised === rival ? { from_m: depths[0], to_m: lastOf(depths) } : servedBy(depths, advised, rival);
  if (!served) return {};
  const { from_m, to_m } = served;
  const inside = [from_m, to_m].filter((d) => d > depths[0] && d < lastOf(depths));
  return {
    serves_min_depth_m: from_m,
    serves_max_depth_m: to_m,
    ...(changeable && inside.length > 0 ? { change_depths_m: inside } : {}),
  };
}
