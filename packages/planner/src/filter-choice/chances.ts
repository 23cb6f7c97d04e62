/** How likely each of several figures that move together is the least. */
import { itemAt, valueAt } from "../lists/non-empty.js";

/** Points of the sequence; each counts twice, once with all signs turned, so that nothing is shifted by it. */
const POINTS = 2048;

/**
 * Generator of the additive recurrence that fills so many dimensions most evenly: powers of the root of x^(d+1) = x + 1
 * (M. Roberts, "The unreasonable effectiveness of quasirandom sequences", 2018; from memory).
 */
function generatorOf(dimensions: number): number[] {
  let root = 2;
  for (let i = 0; i < 60; i++) root = (1 + root) ** (1 / (dimensions + 1));
  return Array.from({ length: dimensions }, (_, d) => root ** -(d + 1));
}

/** Pairs of even numbers between 0 and 1 made pairs of normal ones (Box & Muller 1958). */
function normalPoint(generator: readonly number[], n: number, out: Float64Array): void {
  const even = (d: number): number => (0.5 + (n + 1) * (generator[d] ?? 0)) % 1;
  for (let d = 0; d < out.length; d += 2) {
    const radius = Math.sqrt(-2 * Math.log(1 - even(d)));
    const turn = 2 * Math.PI * even(d + 1);
    out[d] = radius * Math.cos(turn);
    if (d + 1 < out.length) out[d + 1] = radius * Math.sin(turn);
  }
}

/** Farther behind than so many standard deviations nothing is ever the least. */
const OUT_OF_REACH_SD = 5;

const spreadOf = (a: Float64Array, b: Float64Array): number =>
  Math.sqrt(a.reduce((sum, shift, c) => sum + (shift - valueAt(b, c)) ** 2, 0));

/**
 * Probability of each figure to be the least of all; they add up to 1. Each is normal about its likely value and shifted by the same
 * independent causes, by so much for a standard deviation of each. Of equals the first. Within about 0.01.
 */
export function chancesOfLeast(likely: readonly number[], shifts: readonly Float64Array[]): number[] {
  const lead = likely.indexOf(Math.min(...likely));
  const leading = itemAt(shifts, lead);
  const contenders = [...likely.keys()].filter((k) => {
    const behind = itemAt(likely, k) - itemAt(likely, lead);
    return k === lead || behind < OUT_OF_REACH_SD * spreadOf(itemAt(shifts, k), leading);
  });
  const chances = likely.map(() => 0);
  if (contenders.length === 1) chances[lead] = 1;
  else countWins(contenders, likely, shifts, chances);
  return chances;
}

function countWins(
  contenders: readonly number[],
  likely: readonly number[],
  shifts: readonly Float64Array[],
  chances: number[],
): void {
  const z = new Float64Array(shifts[0]?.length ?? 0);
  const generator = generatorOf(z.length + (z.length % 2));
  for (let n = 0; n < POINTS; n++) {
    normalPoint(generator, n, z);
    let here = 0;
    let opposite = 0;
    let leastHere = Number.POSITIVE_INFINITY;
    let leastOpposite = Number.POSITIVE_INFINITY;
    for (const k of contenders) {
      const shift = itemAt(shifts, k);
      let moved = 0;
      for (let c = 0; c < z.length; c++) moved += valueAt(shift, c) * valueAt(z, c);
      const value = itemAt(likely, k);
      if (value + moved < leastHere) {
        here = k;
        leastHere = value + moved;
      }
      if (value - moved < leastOpposite) {
        opposite = k;
        leastOpposite = value - moved;
      }
    }
    for (const k of [here, opposite]) chances[k] = itemAt(chances, k) + 1 / (2 * POINTS);
  }
}
