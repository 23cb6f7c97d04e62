/** Where a few balances go when the light asks for more of them than there is time for. */
import type { ShiftBetween } from "./shift-between.js";

/** A way along depths that a diver can hit, and those of them where a balance may be made. */
interface Stretch {
  /** Where the last balance was made. */
  balanced_m: number;
  /** In the order in which they are passed. */
  stops: readonly number[];
  mayBalance: (at_m: number, last_m: number) => boolean;
}

interface Spread {
  cost: number;
  depths_m: number[];
}

/** Of the dive, a stop above 5 m stands for half as much as one below: they are half as far apart. */
const lengthAt = (at_m: number): number => (at_m < 5 ? 0.5 : 1);

/**
 * The balances, `most` at most, that leave the least mean square of the avoidable cast over the way, each metre of depth counting the
 * same: a judgement, as nobody says where they film how long. Exact, by dynamic programming.
 */
export function spreadAlong(
  { balanced_m, stops, mayBalance }: Stretch,
  most: number,
  shift: ShiftBetween,
): number[] {
  /** From each stop on, by what is left of the balances. */
  const known = new Map<string, Spread>();
  const squared = (last_m: number, at_m: number) => Math.max(0, shift(last_m, at_m)) ** 2 * lengthAt(at_m);
  /** @param next the first stop that is not passed yet */
  const best = (last_m: number, next: number, left: number): Spread => {
    const key = `${next} ${left}`;
    const before = known.get(key);
    if (before) return before;
    let least: Spread | undefined;
    let passed = 0;
    for (const [i, at_m] of stops.entries()) {
      if (i < next) continue;
      if (left > 0 && mayBalance(at_m, last_m)) {
        const after = best(at_m, i + 1, left - 1);
        const cost = passed + after.cost;
        if (!least || cost < least.cost) least = { cost, depths_m: [at_m, ...after.depths_m] };
      }
      passed += squared(last_m, at_m);
    }
    // Where one more gains nothing, it is not made.
    const spread = least && least.cost < passed ? least : { cost: passed, depths_m: [] };
    known.set(key, spread);
    return spread;
  };
  return best(balanced_m, 0, most).depths_m;
}
