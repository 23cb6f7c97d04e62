/**
 * Robust non-linear least squares for a handful of parameters: Gauss-Newton with step halving, residuals beyond 1.345
 * standard deviations weighted down after Huber. Written here because the small public libraries give neither robust
 * weights nor the covariance of what was fitted, and the whole is shorter than wrapping one.
 * Source: Huber 1964, Annals of Mathematical Statistics 35, 73; the constant gives 95 % efficiency on normal noise.
 */
const HUBER = 1.345;
/** Variance of a weighted residual of unit normal noise: what a sum of squares after weighting falls short by. */
export const HUBER_VARIANCE = 0.7102;
const MOST_STEPS = 60;

export interface Fit {
  parameters: number[];
  /** Inverse of the weighted normal matrix: times the variance of a residual, the covariance of the parameters. */
  unscaledCovariance: number[][];
  /** What Huber left of each residual's weight, 0 to 1. */
  weights: number[];
  residuals: number[];
  /** What was minimised: squares of small residuals, moduli of large ones. */
  loss: number;
}

export interface Problem extends Bounds {
  start: number[];
  /** Residuals, each divided by the standard deviation that is expected of it. */
  residuals: (parameters: readonly number[]) => number[];
}

/** Inverse of a symmetric positive definite matrix by Gauss-Jordan elimination. */
export function inverse(matrix: readonly number[][]): number[][] {
  const size = matrix.length;
  const work = matrix.map((row, i) => [...row, ...Array.from({ length: size }, (_, j) => (i === j ? 1 : 0))]);
  for (let pivot = 0; pivot < size; pivot++) {
    const divisor = work[pivot][pivot];
    work[pivot] = work[pivot].map((value) => value / divisor);
    for (let row = 0; row < size; row++) {
      if (row === pivot) continue;
      const factor = work[row][pivot];
      work[row] = work[row].map((value, column) => value - factor * work[pivot][column]);
    }
  }
  return work.map((row) => row.slice(size));
}

const huberWeights = (residuals: readonly number[]): number[] =>
  residuals.map((r) => (Math.abs(r) <= HUBER ? 1 : HUBER / Math.abs(r)));

/** What Huber minimises: squares inside, straight lines outside. */
const loss = (residuals: readonly number[]): number =>
  residuals.reduce(
    (sum, r) => sum + (Math.abs(r) <= HUBER ? r * r : 2 * HUBER * Math.abs(r) - HUBER * HUBER),
    0,
  );

export interface Bounds {
  least: readonly number[];
  most: readonly number[];
}

/** Slopes of each value by each parameter, by differences that stay within the bounds. */
export function jacobian(
  values: (parameters: readonly number[]) => number[],
  at: readonly number[],
  { least, most }: Bounds,
): number[][] {
  const columns = at.map((value, j) => {
    const step = 1e-4 * Math.max(1, Math.abs(value));
    const low = Math.max(least[j], value - step);
    const high = Math.min(most[j], value + step);
    const shifted = (to: number): number[] => values(at.map((v, k) => (k === j ? to : v)));
    const above = shifted(high);
    const below = shifted(low);
    return above.map((v, i) => (v - below[i]) / (high - low));
  });
  return columns[0].map((_, i) => columns.map((column) => column[i]));
}

/** Minimises Huber's loss within the bounds. Deterministic: the same problem gives the same digits. */
export function fitRobustly(problem: Problem): Fit {
  let parameters = problem.start;
  let residuals = problem.residuals(parameters);
  const within = (value: number, j: number): number =>
    Math.min(problem.most[j], Math.max(problem.least[j], value));
  const normal = (): { covariance: number[][]; step: number[] } => {
    const slopes = jacobian(problem.residuals, parameters, problem);
    const weights = huberWeights(residuals);
    const size = parameters.length;
    const matrix = Array.from({ length: size }, (_, j) =>
      Array.from({ length: size }, (_, k) =>
        slopes.reduce((sum, row, i) => sum + weights[i] * row[j] * row[k], 0),
      ),
    );
    const covariance = inverse(matrix);
    const gradient = Array.from({ length: size }, (_, j) =>
      slopes.reduce((sum, row, i) => sum + weights[i] * row[j] * residuals[i], 0),
    );
    return {
      covariance,
      step: covariance.map((row) => -row.reduce((sum, value, k) => sum + value * gradient[k], 0)),
    };
  };
  for (let count = 0; count < MOST_STEPS; count++) {
    const { step } = normal();
    const before = loss(residuals);
    let length = 1;
    let next = parameters;
    let nextResiduals = residuals;
    do {
      next = parameters.map((value, j) => within(value + length * step[j], j));
      nextResiduals = problem.residuals(next);
      length /= 2;
    } while (loss(nextResiduals) > before && length > 1e-6);
    const gain = before - loss(nextResiduals);
    if (!(gain > 0)) break;
    parameters = next;
    residuals = nextResiduals;
    if (gain < 1e-8 * (1 + before)) break;
  }
  return {
    parameters,
    unscaledCovariance: normal().covariance,
    weights: huberWeights(residuals),
    residuals,
    loss: loss(residuals),
  };
}
