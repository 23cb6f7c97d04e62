/** Finds what to mount: every candidate judged over the range, and the decision between them. */
import type { Conditions } from "../light/conditions.js";
import type { NonEmpty } from "../lists/non-empty.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { beyondBand, type Candidate, finerThan } from "./candidates.js";
import { type Decision, decide, worthwhileFor } from "./decide.js";
import {
  type Comparison,
  creditUnder,
  finishOf,
  type Judged,
  judge,
  rangeError,
  whereRedIsGone,
} from "./merits.js";

export interface Search extends Pick<Comparison, "redIsGone" | "changeable" | "credit"> {
  /** Every candidate that was tried; the first is no filter. */
  judged: Readonly<NonEmpty<Judged>>;
  decision: Decision;
  /** What a filter must gain. */
  worthwhile: number;
}

/** Searches the candidates and then, on the grid, the densities around the best of them and at the ends of what is as good. */
export function searchFilters(
  conditions: Conditions,
  depths: Readonly<NonEmpty<number>>,
  { changeable, candidates }: { changeable: boolean; candidates: Readonly<NonEmpty<Candidate>> },
): Search {
  let search = decided(conditions, judge(conditions, NOMINAL, depths, candidates), changeable);
  const tryAlso = (more: readonly Candidate[]): void => {
    const { judged } = search;
    const untried = more.filter(
      ({ kind, density }) =>
        !judged.some((j) => j.candidate.kind === kind && j.candidate.density === density),
    );
    search = decided(conditions, [...judged, ...judge(conditions, NOMINAL, depths, untried)], changeable);
  };
  const { bestFilter } = search.decision;
  if (bestFilter) tryAlso(finerThan(bestFilter.candidate));
  const { advised, asGood } = search.decision;
  tryAlso(beyondBand(advised.candidate, asGood));
  return search;
}

function decided(conditions: Conditions, judged: Readonly<NonEmpty<Judged>>, changeable: boolean): Search {
  const redIsGone = whereRedIsGone(judged);
  const finish = finishOf(conditions.scene);
  const [credit, worthwhile] = [creditUnder(finish, conditions), worthwhileFor(finish)];
  const comparison = { without: judged[0], redIsGone, credit, changeable };
  const scored = judged.map((j) => ({ candidate: j.candidate, delta_e00: rangeError(j, comparison) }));
  return { judged, decision: decide(scored, worthwhile), worthwhile, redIsGone, credit, changeable };
}
