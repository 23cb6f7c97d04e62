/** Which filter that is not among the pieces would help most, of the kinds and densities on the planner's grid. */
import { type Candidate, GRID } from "../filter-choice/candidates.js";
import { judgeIn, rangeError, sightOf } from "../filter-choice/merits.js";
import { whereRedIsGone } from "../filter-choice/red-is-gone.js";
import { nonEmpty } from "../lists/non-empty.js";
import type { OneMore } from "../result/kit-advice.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import type { DiveOptions } from "./options.js";

/** What each filter of the grid leaves on a dive by daylight; nothing where there is none. */
function errorsOnGrid({ lightings, dive: { scene } }: DiveOptions): number[] | undefined {
  const day = lightings.find(({ use }) => use === "none");
  if (day === undefined) return undefined;
  const { conditions, depths, mayGain } = day;
  const judged = nonEmpty(judgeIn(sightOf(conditions, NOMINAL, depths), GRID), "candidates");
  const redIsGone = whereRedIsGone(conditions, depths, judged);
  const changeable = scene.filter_change_underwater !== "none";
  const comparison = { without: judged[0], redIsGone, mayGain, changeable };
  return judged.map((one) => rangeError(one, comparison));
}

/** A filter of the grid that helps more than another one helps by less than this does not count as better: a weaker one stays. */
const AS_MUCH_DELTA_E00 = 1e-9;

/**
 * @param best with all pieces, dive by dive
 * @param least what it must gain on one dive at least
 * @returns undefined where no filter gains so much; where several do as well, the first of the grid, from weak to dense
 */
export function oneMoreFilter(
  dives: readonly DiveOptions[],
  best: readonly number[],
  least: number,
): { candidate: Candidate; more: OneMore } | undefined {
  const errors = dives.map(errorsOnGrid);
  let found: { candidate: Candidate; more: OneMore } | undefined;
  GRID.forEach((candidate, nth) => {
    const { kind: filter_kind, density: filter_density } = candidate;
    if (filter_kind === "none" || filter_density === undefined) return;
    const gains = dives.map(({ dive: { id } }, d) => ({
      id,
      gains_delta_e00: Math.max(0, (best[d] ?? 0) - (errors[d]?.[nth] ?? Number.POSITIVE_INFINITY)),
    }));
    if (!gains.some(({ gains_delta_e00 }) => gains_delta_e00 >= least)) return;
    const gains_delta_e00 = gains.reduce((sum, gain) => sum + gain.gains_delta_e00, 0);
    if (found && gains_delta_e00 <= found.more.gains_delta_e00 + AS_MUCH_DELTA_E00) return;
    const helped = gains.filter((gain) => gain.gains_delta_e00 > 0);
    found = { candidate, more: { filter_kind, filter_density, gains_delta_e00, dives: helped } };
  });
  return found;
}
