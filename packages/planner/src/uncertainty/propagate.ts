/**
 * Percentiles of what the model answers, from named causes.
 *
 * Each cause is taken alone to its own 10th and 90th percentile (1.2816 standard deviations); the shifts of an answer are added
 * in quadrature, upward and downward shifts apart, so that a lopsided cause gives a lopsided answer. First order: exact for
 * independent normal causes and answers that are linear in them; `propagate.test.ts` checks it against a seeded simulation.
 */
import type { Estimate, UncertaintyCause } from "../result/common.js";
import { type Cause, nuisanceAt } from "./causes.js";
import { Z90 } from "./normal.js";
import { NOMINAL, type Nuisance } from "./nuisance.js";

export interface Propagated {
  /** One estimate per number that the evaluation returns. */
  estimates: Estimate[];
  /** Per cause: every number at its 10th and at its 90th percentile. */
  runs: { minus: readonly number[]; plus: readonly number[] }[];
  causes: Cause[];
}

/** @param evaluate must return the same count of finite numbers for every setting. */
export function propagate(
  evaluate: (nuisance: Nuisance) => readonly number[],
  causes: readonly Cause[],
): Propagated {
  const base = evaluate(NOMINAL);
  const runs = causes.map((cause) => ({
    minus: evaluate(nuisanceAt(cause, -Z90)),
    plus: evaluate(nuisanceAt(cause, Z90)),
  }));
  const estimates = base.map((likely, k) => {
    let up = 0;
    let down = 0;
    for (const run of runs) {
      const minus = run.minus[k] - likely;
      const plus = run.plus[k] - likely;
      up += Math.max(0, minus, plus) ** 2;
      down += Math.min(0, minus, plus) ** 2;
    }
    return { low: likely - Math.sqrt(down), likely, high: likely + Math.sqrt(up) };
  });
  return { estimates, runs, causes: [...causes] };
}

/** By how much each cause shifts one number, in the order of `causes`. */
const shiftsOf = ({ estimates, runs }: Propagated, answer: number): { minus: number; plus: number }[] =>
  runs.map(({ minus, plus }) => ({
    minus: minus[answer] - estimates[answer].likely,
    plus: plus[answer] - estimates[answer].likely,
  }));

/** The causes of one answer's spread by their share of its variance, largest first; shares below 1 % are left out. */
export function shareOfCauses(propagated: Propagated, answer: number): UncertaintyCause[] {
  const shifts = shiftsOf(propagated, answer);
  const variances = shifts.map(({ minus, plus }) => (Math.abs(plus) ** 2 + Math.abs(minus) ** 2) / 2);
  const total = variances.reduce((sum, v) => sum + v, 0);
  if (total === 0) return [];
  return propagated.causes
    .map(({ id, text, how_to_shrink }, i) => ({
      cause: id,
      text,
      share: variances[i] / total,
      how_to_shrink,
    }))
    .filter((entry) => entry.share >= 0.01)
    .sort((a, b) => b.share - a.share || (a.cause < b.cause ? -1 : 1));
}

/** Standard deviation of one answer, from the same shifts. */
export function sigmaOf(propagated: Propagated, answer: number): number {
  const shifts = shiftsOf(propagated, answer);
  const variance = shifts.reduce((sum, { minus, plus }) => sum + ((plus - minus) / 2 / Z90) ** 2, 0);
  return Math.sqrt(variance);
}
