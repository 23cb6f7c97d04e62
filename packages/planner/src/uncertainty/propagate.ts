/**
 * Percentiles of what the model answers, from named causes.
 *
 * Each cause is taken alone to its own 10th and 90th percentile (1.2816 standard deviations); the shifts of an answer are added
 * in quadrature, upward and downward shifts apart, so that a lopsided cause gives a lopsided answer. First order: exact for
 * independent normal causes and answers that are linear in them; `propagate.test.ts` checks it against a seeded simulation.
 */
import { valueAt } from "../lists/non-empty.js";
import type { Estimate, UncertaintyCause } from "../result/common.js";
import { type Cause, nuisanceAt } from "./causes.js";
import { type Each, eachFigure, type Figures } from "./figures.js";
import { Z90 } from "./normal.js";
import { NOMINAL, type Nuisance } from "./nuisance.js";

/** What an evaluation gives with one cause at its 10th and at its 90th percentile. */
interface Run<F> {
  cause: Cause;
  minus: F;
  plus: F;
}

export interface Propagated<F> {
  /** An estimate in place of every number that the evaluation returns. */
  estimates: Each<F, Estimate>;
  nominal: F;
  runs: readonly Run<F>[];
}

/** Picks one of an evaluation's figures, as in `({ depths }) => lastOf(depths).red`. */
type Picker<F> = (figures: F) => number;

/** @param evaluate must return finite numbers under the same names for every setting. */
export function propagate<F extends Figures<F>>(
  evaluate: (nuisance: Nuisance) => F,
  causes: readonly Cause[],
): Propagated<F> {
  const nominal = evaluate(NOMINAL);
  const runs = causes.map((cause) => ({
    cause,
    minus: evaluate(nuisanceAt(cause, -Z90)),
    plus: evaluate(nuisanceAt(cause, Z90)),
  }));
  return { estimates: estimatesOf(nominal, runs), nominal, runs };
}

function estimatesOf<F extends Figures<F>>(nominal: F, runs: readonly Run<F>[]): Each<F, Estimate> {
  const shifted = runs.flatMap(({ minus, plus }) => [minus, plus]);
  return eachFigure(nominal, shifted, (likely, numbers) => {
    let up = 0;
    let down = 0;
    for (let k = 0; k < numbers.length; k += 2) {
      const minus = valueAt(numbers, k) - likely;
      const plus = valueAt(numbers, k + 1) - likely;
      up += Math.max(0, minus, plus) ** 2;
      down += Math.min(0, minus, plus) ** 2;
    }
    return { low: likely - Math.sqrt(down), likely, high: likely + Math.sqrt(up) };
  });
}

interface Shift {
  cause: Cause;
  minus: number;
  plus: number;
}

/** By how much each cause shifts one figure. */
const shiftsOf = <F>({ nominal, runs }: Propagated<F>, pick: Picker<F>): Shift[] =>
  runs.map(({ cause, minus, plus }) => ({
    cause,
    minus: pick(minus) - pick(nominal),
    plus: pick(plus) - pick(nominal),
  }));

/** The causes of one figure's spread by their share of its variance, largest first; shares below 1 % are left out. */
export function shareOfCauses<F>(propagated: Propagated<F>, pick: Picker<F>): UncertaintyCause[] {
  const parts = shiftsOf(propagated, pick).map(({ cause, minus, plus }) => ({
    cause,
    variance: (Math.abs(plus) ** 2 + Math.abs(minus) ** 2) / 2,
  }));
  const total = parts.reduce((sum, { variance }) => sum + variance, 0);
  if (total === 0) return [];
  return parts
    .map(({ cause: { shift: _, ...coded }, variance }) => ({ ...coded, share: variance / total }))
    .filter((entry) => entry.share >= 0.01)
    .sort((a, b) => b.share - a.share || (a.code < b.code ? -1 : 1));
}

/** Standard deviation of one figure, from the same shifts. */
export function sigmaOf<F>(propagated: Propagated<F>, pick: Picker<F>): number {
  const shifts = shiftsOf(propagated, pick);
  const variance = shifts.reduce((sum, { minus, plus }) => sum + ((plus - minus) / 2 / Z90) ** 2, 0);
  return Math.sqrt(variance);
}
