/** Finds what to mount: every candidate judged over the range, and the decision between them. */
import type { Conditions } from "../light/conditions.js";
import type { NonEmpty } from "../lists/non-empty.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { beyondBand, type Candidate, finerThan } from "./candidates.js";
import { asGoodWithin, type Decision, decide, worthwhileFor } from "./decide.js";
import { type Comparison, finishOf, type Judged, judge, mayFilterGain, rangeError } from "./merits.js";
import { whereRedIsGone } from "./red-is-gone.js";

export interface Search extends Pick<Comparison, "redIsGone" | "changeable" | "mayGain"> {
  /** Every candidate that was tried; the first is no filter. */
  judged: Readonly<NonEmpty<Judged>>;
  decision: Decision;
  /** What a filter must gain. */
  worthwhile: number;
  /** How near errors of densities are that are as good. */
  within: number;
}

/** Searches the candidates and then, on the grid, the densities around the best of them and at the ends of what is as good. */
export function searchFilters(
  conditions: Conditions,
  depths: Readonly<NonEmpty<number>>,
  { changeable, candidates }: { changeable: boolean; candidates: Readonly<NonEmpty<Candidate>> },
): Search {
  const first = judge(conditions, NOMINAL, depths, candidates);
  const redIsGone = whereRedIsGone(conditions, depths, first);
  const decided = (judged: Readonly<NonEmpty<Judged>>) =>
    decidedAmong(conditions, judged, { redIsGone, changeable });
  let search = decided(first);
  const tryAlso = (more: readonly Candidate[]): void => {
    const { judged } = search;
    const untried = more.filter(
      ({ kind, density }) =>
        !judged.some((j) => j.candidate.kind === kind && j.candidate.density === density),
    );
    search = decided([...judged, ...judge(conditions, NOMINAL, depths, untried)]);
  };
  const { bestFilter } = search.decision;
  if (bestFilter) tryAlso(finerThan(bestFilter.candidate));
  const { advised, asGood } = search.decision;
  tryAlso(beyondBand(advised.candidate, asGood));
  return search;
}

function decidedAmong(
  conditions: Conditions,
  judged: Readonly<NonEmpty<Judged>>,
  { redIsGone, changeable }: Pick<Search, "redIsGone" | "changeable">,
): Search {
  const finish = finishOf(conditions.scene);
  const [worthwhile, within] = [worthwhileFor(finish), asGoodWithin(finish)];
  const mayGain = mayFilterGain(conditions);
  const comparison = { without: judged[0], redIsGone, mayGain, changeable };
  const scored = judged.map((j) => ({ candidate: j.candidate, delta_e00: rangeError(j, comparison) }));
  const decision = decide(scored, worthwhile, within);
  return { judged, decision, worthwhile, within, redIsGone, mayGain, changeable };
}
