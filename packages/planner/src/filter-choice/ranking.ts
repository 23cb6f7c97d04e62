/** Everything that is owned, best first: how well each filter would do, how surely, what it costs and where it serves. */
import { itemAt, lastOf, mapEach, middleItem, type NonEmpty, nonEmpty, valueAt } from "../lists/non-empty.js";
import type { RankedFilter } from "../result/filter-choice.js";
import { Z90 } from "../uncertainty/normal.js";
import { NO_FILTER } from "./candidates.js";
import { chancesOfLeast } from "./chances.js";
import { type AskOthers, atLeastZero, type Choice, described, luminanceLoss } from "./choose.js";
import { costOf } from "./decide.js";
import { type Comparison, creditedErrors, type Judged, judgeIn, rangeError } from "./merits.js";
import type { Search } from "./search.js";
import { servedBy } from "./served.js";

/** Depths that stand for a range where only the shift of an error is asked for. */
type Few = <T>(items: Readonly<NonEmpty<T>>) => NonEmpty<T>;
const endsAndMiddle: Few = (items) =>
  items.length < 3 ? [items[0]] : [items[0], middleItem(items), lastOf(items)];
const middleAlone: Few = (items) => [middleItem(items)];

/** So many of the best are judged at both ends of the range and in its middle, whatever is behind them in its middle alone. */
const LEADING = 6;
const FEW: Readonly<Record<"leading" | "behind", Few>> = { leading: endsAndMiddle, behind: middleAlone };

/** What all candidates come to in each state of the world. Those that the choice is not between are judged at a few depths. */
export const askAll: AskOthers = (search) => {
  const { judged, worthwhile, mayGain, changeable } = search;
  const [bare] = judged;
  const gone = nonEmpty(search.redIsGone, "depths");
  const over = (few: Few, without: Judged): Comparison => ({
    without: { candidate: NO_FILTER, merits: few(without.merits) },
    redIsGone: few(gone),
    mayGain,
    changeable,
  });
  const nominal = judged.map((j) => rangeError(j, { ...search, without: bare }));
  const costs = judged.map(({ candidate }, k) => costOf(candidate, itemAt(nominal, k), worthwhile));
  const lead = [...costs].sort((a, b) => a - b)[LEADING - 1] ?? Number.POSITIVE_INFINITY;
  const asked = judged.map(({ candidate, merits }, k) => {
    const group = itemAt(costs, k) <= lead ? "leading" : "behind";
    const few = FEW[group];
    // What a state shifts the error by at a few depths is taken for its shift over the range.
    const fewError = rangeError({ candidate, merits: few(merits) }, over(few, bare));
    return { group, beyondFew: itemAt(nominal, k) - fewError } as const;
  });
  return ({ sight, without, known }) => {
    const fewOf = (few: Few) => ({
      sight: { ...sight, stages: few(sight.stages) },
      comparison: over(few, without),
    });
    const groups = { leading: fewOf(FEW.leading), behind: fewOf(FEW.behind) };
    const errors = new Float64Array(judged.length);
    const losses_stops = new Float64Array(judged.length);
    judged.forEach(({ candidate }, k) => {
      const exact = known.find((one) => one.candidate === candidate);
      const { group, beyondFew } = itemAt(asked, k);
      const few = groups[group];
      errors[k] =
        exact?.delta_e00 ?? rangeError(judgeIn(few.sight, [candidate])[0], few.comparison) + beyondFew;
      losses_stops[k] = candidate.kind === "none" ? 0 : luminanceLoss(sight, candidate);
    });
    return { errors, losses_stops };
  };
};

/** The choice and all that it was made from: the one advised first, then by colour error and what a filter has to earn. */
export function rankingOf(choice: Choice, depths: Readonly<NonEmpty<number>>): NonEmpty<RankedFilter> {
  const { search, propagated } = choice;
  const { judged, worthwhile, decision } = search;
  const { errors, losses_stops } = propagated.estimates.others;
  const costs = judged.map(({ candidate }, k) => costOf(candidate, itemAt(errors, k).likely, worthwhile));
  const shifts = judged.map((_, k) =>
    Float64Array.from(
      propagated.runs,
      ({ plus, minus }) => (valueAt(plus.others.errors, k) - valueAt(minus.others.errors, k)) / 2 / Z90,
    ),
  );
  const chances = chancesOfLeast(costs, shifts);
  const order = judged
    .map(({ candidate }, k) => ({
      k,
      cost: candidate === decision.advised.candidate ? Number.NEGATIVE_INFINITY : itemAt(costs, k),
    }))
    .sort((a, b) => a.cost - b.cost);
  return mapEach(nonEmpty(order, "candidates"), ({ k }) => {
    const of = itemAt(judged, k);
    return {
      filter_kind: of.candidate.kind,
      ...described(of.candidate),
      colour_error_delta_e00: atLeastZero(itemAt(errors, k)),
      probability_best: itemAt(chances, k),
      filter_loss_stops: atLeastZero(itemAt(losses_stops, k)),
      ...servedIn(depths, of, search),
    };
  });
}

/** What is even is no filter's, which costs nothing. */
const EVEN_DELTA_E00 = 1e-9;

/** Where a filter leaves less error than none, or none no more than any filter. */
function servedIn(
  depths: Readonly<NonEmpty<number>>,
  of: Judged,
  { judged, redIsGone, mayGain }: Search,
): Pick<RankedFilter, "serves_min_depth_m" | "serves_max_depth_m"> {
  const [without, ...filters] = judged;
  const credited = (j: Judged) => creditedErrors(j, { without, redIsGone, mayGain });
  const ofFilters = filters.map(credited);
  const leastOfFilters = mapEach(
    depths,
    (_, d) =>
      ofFilters.reduce((least, errors) => Math.min(least, itemAt(errors, d)), Number.MAX_VALUE) +
      EVEN_DELTA_E00,
  );
  const served = servedBy(depths, credited(of), of === without ? leastOfFilters : credited(without));
  return served ? { serves_min_depth_m: served.from_m, serves_max_depth_m: served.to_m } : {};
}
