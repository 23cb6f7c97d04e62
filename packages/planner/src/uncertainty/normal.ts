/** 90th percentile of the standard normal distribution. */
export const Z90 = 1.2815515655446004;

/**
 * Standard normal distribution function, error below 7.5e-8.
 * Source: Abramowitz & Stegun 1964, Handbook of Mathematical Functions, 26.2.17.
 */
export function normalCdf(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const poly =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * poly;
  return z >= 0 ? 1 - tail : tail;
}
