/**
 * How the modules in src/data hold tables, so that whoever downloads the model downloads little: evenly spaced numbers by
 * their rule, others as the differences between neighbours. Written by scripts/pack-columns.mjs; numbers come out as they
 * are in the tables, to the last bit.
 */

/** `count` numbers from `first` on, `step` apart. */
export function evenly(first: number, step: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => first + i * step);
}

/**
 * A column of a table.
 * @param decimals how many the table prints
 * @param order how often differences between neighbours were taken, the first number of each round left in its place
 * @param differences whole numbers, in units of the last decimal; a minus sign parts two numbers as a space does
 */
export function unpack(decimals: number, order: number, differences: string): number[] {
  const whole = (differences.match(/-?\d+/g) ?? []).map(Number);
  for (let round = order; round > 0; round--) {
    for (let i = round; i < whole.length; i++) whole[i] += whole[i - 1];
  }
  // By way of its text: a division would be as exact, a multiplication would not.
  return whole.map((n) => Number(`${n}e-${decimals}`));
}
