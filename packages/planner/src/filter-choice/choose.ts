import { integrateProduct, multiply, stopsToDensity, Y_BAR } from "@sunfathom/optics";
import { balanceSources } from "../camera/balance-setting.js";
import { FITS_WITHIN_STOPS } from "../camera/exposure-settings.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { curveOfKit } from "../light/curve-of-kit.js";
import { depthsOf } from "../light/depths.js";
import { measuredCurve } from "../light/measured-curve.js";
import { requireLight } from "../light/require-light.js";
import { requireSeenThrough } from "../light/seen-through.js";
import { lightSources } from "../light/sources.js";
import { itemAt, lastOf, mapEach, middleItem, type NonEmpty } from "../lists/non-empty.js";
import type { Estimate, UncertaintyCause } from "../result/common.js";
import type { FilterAtDepth, FilterChoiceFigures } from "../result/filter-choice.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, filterCausesOf } from "../uncertainty/causes.js";
import { normalCdf } from "../uncertainty/normal.js";
import { mapRising } from "../uncertainty/percentiles.js";
import { type Propagated, propagate, shareOfCauses, sigmaOf } from "../uncertainty/propagate.js";
import { type Candidate, candidateFilter, NO_FILTER } from "./candidates.js";
import { costOf, type Decision, decide, type Scored } from "./decide.js";
import type { Merit } from "./merit.js";
import { creditedErrors, type Judged, judgeIn, rangeError, type Sight, sightOf } from "./merits.js";
import { type Search, searchFilters } from "./search.js";
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
export function luminanceLoss({ stages, nuisance }: Sight, candidate: Candidate): number {
  const { subject } = middleItem(stages);
  const seen = multiply(subject, candidateFilter(candidate, nuisance));
  return Math.log2(integrateProduct(subject, Y_BAR) / integrateProduct(seen, Y_BAR));
}

/**
 * One filter of a kit that passes nothing is a slip in its data, and refused by its place: left out in silence, it would
 * never be put right.
 * @throws SceneProblem for the first such filter
 */
export function requireSeenThroughKit(conditions: Conditions): void {
  for (const [index, { item, filter_transmittance }] of (conditions.scene.kit ?? []).entries()) {
    if (item === "lens_filter" && filter_transmittance)
      requireSeenThrough(conditions, measuredCurve(filter_transmittance), curveOfKit(index));
  }
}

/** One state of the world, and what is known of it when others are asked for. */
interface InState {
  sight: Sight;
  without: Judged;
  /** Errors of those that the choice is between. */
  known: readonly Scored[];
}

/** What all candidates come to in one state, in their order; nothing where the choice alone is asked for. */
interface Others {
  errors: Float64Array;
  losses_stops: Float64Array;
}
export type AskOthers = (search: Search) => (state: InState) => Others;
const NO_OTHERS: Others = { errors: new Float64Array(), losses_stops: new Float64Array() };
const askNone: AskOthers = () => () => NO_OTHERS;

interface StateFigures {
  advisedError: number;
  runnerUpError: number;
  withoutError: number;
  losesBy: number;
  loss: number;
  others: Others;
}

/** A choice before it is told why. */
export interface Choice {
  conditions: Conditions;
  search: Search;
  answer: FilterChoiceFigures;
  advised: Judged;
  propagated: Propagated<StateFigures>;
  uncertainty: UncertaintyCause[];
  sources: string[];
}

/**
 * The filter for a range of depths among these candidates, of which the first is no filter.
 * @throws SceneProblem without any light, or for a sun or water outside the model's domain.
 */
export function chooseAmong(
  scene: Scene,
  candidates: Readonly<NonEmpty<Candidate>>,
  askOthers: AskOthers = askNone,
): Choice {
  const conditions = conditionsOf(scene);
  requireLight(conditions);
  requireSeenThroughKit(conditions);
  const depths = depthsOf(scene);
  const changeable = scene.filter_change_underwater !== "none";
  const search = searchFilters(conditions, depths, { changeable, candidates });
  const { judged, decision, worthwhile, redIsGone, mayGain } = search;
  const advised = decision.advised.candidate;
  const runnerUp = decision.runnerUp.candidate;
  const isFilter = advised.kind !== "none";

  const othersIn = askOthers(search);
  const propagated = propagate(
    (nuisance): StateFigures => {
      const sight = sightOf(conditions, nuisance, depths);
      const [without, first, second] = judgeIn(sight, [NO_FILTER, advised, runnerUp]);
      const error = (judged: Judged) => rangeError(judged, { without, redIsGone, mayGain, changeable });
      const [advisedError, runnerUpError] = [error(first), error(second)];
      return {
        advisedError,
        runnerUpError,
        withoutError: error(without),
        losesBy: runnerUpError - advisedError,
        loss: isFilter ? luminanceLoss(sight, advised) : 0,
        others: othersIn({
          sight,
          without,
          known: [
            { candidate: NO_FILTER, delta_e00: error(without) },
            { candidate: advised, delta_e00: advisedError },
            { candidate: runnerUp, delta_e00: runnerUpError },
          ],
        }),
      };
    },
    [...causesOf(conditions), ...filterCausesOf(conditions.scene)],
  );
  const { advisedError, runnerUpError, withoutError, losesBy, loss } = propagated.estimates;
  const gap =
    costOf(runnerUp, runnerUpError.likely, worthwhile) - costOf(advised, advisedError.likely, worthwhile);
  const sigma = sigmaOf(propagated, (figures) => figures.losesBy);
  const probability_better = runnerUp === advised ? 0 : normalCdf(-gap / Math.max(1e-6, sigma));

  const credited = (of: Judged) => creditedErrors(of, { without: judged[0], redIsGone, mayGain });
  const of = (candidate: Candidate): Judged => judged.find((j) => j.candidate === candidate) ?? judged[0];
  const answer: FilterChoiceFigures = {
    filter_kind: advised.kind,
    ...described(advised),
    ...asGoodBand(decision),
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
    filter_loss_stops: atLeastZero(loss),
    ...servedAnswer(
      depths,
      credited(of(advised)),
      isFilter ? credited(judged[0]) : decision.bestFilter && credited(of(decision.bestFilter.candidate)),
      changeable && isFilter,
    ),
    depths: mapEach(depths, (depth_m, d) => atDepth(depth_m, d, search, of(advised))),
  };
  return {
    conditions,
    search,
    answer,
    advised: of(advised),
    propagated,
    uncertainty: shareOfCauses(propagated, (figures) => (sigma > 0 ? figures.losesBy : figures.advisedError)),
    sources: [...new Set([...lightSources(conditions), ...SOURCES, ...balanceSources(scene)])],
  };
}

export const described = ({
  kind,
  density,
  id,
}: Candidate): { filter_density?: number; filter_id?: string } => ({
  ...(kind === "none" || density === undefined ? {} : { filter_density: density }),
  ...(id === undefined ? {} : { filter_id: id }),
});

function atDepth(
  depth_m: number,
  d: number,
  { judged, worthwhile, within, redIsGone, mayGain }: Search,
  advised: Judged,
): FilterAtDepth {
  const best = decide(
    judged.map((j) => ({
      candidate: j.candidate,
      delta_e00: itemAt(creditedErrors(j, { without: judged[0], redIsGone, mayGain }), d),
    })),
    worthwhile,
    within,
  ).advised;
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

/** Densities as good as the best; what is owned has no other. */
const asGoodBand = ({
  advised,
  asGood,
}: Decision): Pick<FilterChoiceFigures, "as_good_from_density" | "as_good_to_density"> =>
  asGood && advised.candidate.id === undefined
    ? { as_good_from_density: asGood.from, as_good_to_density: asGood.to }
    : {};

/** What no state of the world has below zero is none below it, however wide its spread. */
export const atLeastZero = (e: Estimate): Estimate => mapRising(e, (x) => Math.max(0, x));

/** Neutral density to add where the shallow end is too bright for the camera's limits. */
const neutralDensity = ({ neutral_stops }: Merit): { neutral_density?: number } =>
  neutral_stops > FITS_WITHIN_STOPS ? { neutral_density: stopsToDensity(neutral_stops) } : {};

/** Where the advised choice beats its rival, and where to change if the mount allows it. */
function servedAnswer(
  depths: Readonly<NonEmpty<number>>,
  advised: Readonly<NonEmpty<number>>,
  rival: Readonly<NonEmpty<number>> | undefined,
  changeable: boolean,
): Pick<FilterChoiceFigures, "serves_min_depth_m" | "serves_max_depth_m" | "change_depths_m"> {
  const served = rival ? servedBy(depths, advised, rival) : { from_m: depths[0], to_m: lastOf(depths) };
  if (!served) return {};
  const { from_m, to_m } = served;
  const inside = [from_m, to_m].filter((d) => d > depths[0] && d < lastOf(depths));
  return {
    serves_min_depth_m: from_m,
    serves_max_depth_m: to_m,
    ...(changeable && inside.length > 0 ? { change_depths_m: inside } : {}),
  };
}
