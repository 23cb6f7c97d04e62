/** How sure colour errors are: worked out for the worst off with a filter and without one, and carried over to the others. */
import { NO_FILTER } from "../filter-choice/candidates.js";
import { judgeIn, mayFilterGain, rangeError, sightOf } from "../filter-choice/merits.js";
import type { Estimate, UncertaintyCause } from "../result/common.js";
import { causesOf, FILTER_CAUSES } from "../uncertainty/causes.js";
import { propagate, shareOfCauses } from "../uncertainty/propagate.js";
import type { GuestServed } from "./dive-plan.js";
import type { Served } from "./light.js";

/** One guest on one dive. */
export interface Case {
  d: number;
  g: number;
  of: GuestServed;
}

export interface Spread {
  worst: Case;
  isFiltered: boolean;
  error: Estimate;
  uncertainty: UncertaintyCause[];
}

/** With a filter first, as it is a filter that the doubts are about. */
export function spreadsOf(cases: readonly Case[]): Spread[] {
  return [true, false].flatMap((isFiltered): Spread[] => {
    let worst: { of: Case; served: Served } | undefined;
    for (const one of cases) {
      const { used, served } = one.of;
      if (served === undefined || (used !== undefined) !== isFiltered) continue;
      if (worst === undefined || served.delta_e00 > worst.served.delta_e00) worst = { of: one, served };
    }
    return worst === undefined
      ? []
      : [{ worst: worst.of, isFiltered, ...spreadOf(worst.of.of, worst.served) }];
  });
}

function spreadOf(
  { light: { conditions, depths } }: GuestServed,
  { judged: { candidate }, redIsGone }: Served,
) {
  const mayGain = mayFilterGain(conditions);
  const propagated = propagate(
    (nuisance) => {
      const [without, own] = judgeIn(sightOf(conditions, nuisance, depths), [NO_FILTER, candidate]);
      return { error: rangeError(own, { without, redIsGone, mayGain, changeable: false }) };
    },
    [...causesOf(conditions), ...FILTER_CAUSES],
  );
  return {
    error: propagated.estimates.error,
    uncertainty: shareOfCauses(propagated, ({ error }) => error),
  };
}

/** An estimate around another middle, as far from it in proportion. */
export function inProportion(spread: Estimate | undefined, around: number): Estimate {
  if (spread === undefined || !(spread.likely > 0)) return { low: around, likely: around, high: around };
  const { low, likely, high } = spread;
  return { low: Math.max(0, (around * low) / likely), likely: around, high: (around * high) / likely };
}
