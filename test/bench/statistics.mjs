/** @param {number[]} values */
export function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

/**
 * Slope of the line through the logarithms: 1 where y grows with x, 0 where it does not.
 * @param {{ x: number, y: number }[]} points
 */
export function exponent(points) {
  const xs = points.map(({ x }) => Math.log(x));
  const ys = points.map(({ y }) => Math.log(y));
  const mean = (/** @type {number[]} */ values) => values.reduce((sum, v) => sum + v, 0) / values.length;
  const [mx, my] = [mean(xs), mean(ys)];
  const over = xs.reduce((sum, x, i) => sum + (x - mx) * (ys[i] - my), 0);
  return over / xs.reduce((sum, x) => sum + (x - mx) ** 2, 0);
}

/** The same numbers in every run: a linear congruential generator (Numerical Recipes), 0 to 1. */
export function seeded(/** @type {number} */ seed) {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
