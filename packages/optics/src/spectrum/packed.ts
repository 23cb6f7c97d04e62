/**
 * How the modules in src/data hold tables, so that whoever downloads the model downloads little: evenly spaced numbers by
 * their rule, others as the differences between neighbours. Written by scripts/pack-columns.mjs; numbers come out as they
 * are in the tables, to the last bit.
 */

/** `count` numbers from `first` on, `step` apart. */
export function evenly(first: number, step: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => first + i * step);
}

/** The last character of a number is one of these many from `a` on, those before it of these many from `(` on. */
const LAST = { from: 97, count: 30 };
const BEFORE = { from: 40, count: 52 };

/**
 * A column of a table.
 * @param decimals how many the table prints
 * @param order how often differences between neighbours were taken, the first number of each round left in its place
 * @param differences whole numbers, in units of the last decimal: 0, -1, 1, -2, 2 and so on are counted, and the count is
 * written in characters, the last of each from another range than those before. Small differences are one letter, which a
 * page's compression makes shorter still: a third less than digits take.
 */
export function unpack(decimals: number, order: number, differences: string): number[] {
  const whole: number[] = [];
  let before = 0;
  for (let i = 0; i < differences.length; i++) {
    const code = differences.charCodeAt(i);
    if (code < LAST.from) before = before * BEFORE.count + code - BEFORE.from + 1;
    else {
      const count = before * LAST.count + code - LAST.from;
      whole.push(count % 2 === 0 ? count / 2 : -(count + 1) / 2);
      before = 0;
    }
  }
  for (let round = order; round > 0; round--) {
    for (let i = round; i < whole.length; i++) whole[i] += whole[i - 1];
  }
  // By way of its text: a division would be as exact, a multiplication would not.
  return whole.map((n) => Number(`${n}e-${decimals}`));
}
