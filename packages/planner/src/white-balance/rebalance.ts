/** The depths at which to balance again, so that the colour shift since the last balance stays under a tolerance. */

/** Cast on a grey at one depth that a balance made at another leaves and a new one would take out, in CIEDE2000. */
export type ShiftBetween = (balanced_m: number, seen_m: number) => number;

/** Depths are found to a tenth of a metre. */
const STEP_M = 0.1;
/** A balance for less than this much depth is no use: the water changes faster than a diver can balance. */
const LEAST_LEG_M = 0.5;

/**
 * From `from_m` towards `to_m`: balance at the start, and again wherever the shift since the last balance has reached the tolerance.
 * The last depth is included only where it needs a balance of its own.
 */
export function balanceDepths(
  from_m: number,
  to_m: number,
  tolerance: number,
  shift: ShiftBetween,
): number[] {
  const direction = Math.sign(to_m - from_m);
  const depths = [from_m];
  let last = from_m;
  while (direction !== 0) {
    const next = firstBeyond({ last_m: last, to_m, direction }, tolerance, shift);
    if (next === undefined) break;
    depths.push(next);
    last = next;
  }
  return depths;
}

interface Way {
  last_m: number;
  to_m: number;
  /** 1 down, -1 up. */
  direction: number;
}

function firstBeyond(
  { last_m, to_m, direction }: Way,
  tolerance: number,
  shift: ShiftBetween,
): number | undefined {
  const steps = Math.floor(Math.abs(to_m - last_m) / STEP_M + 1e-9);
  const at = (step: number) => Math.round((last_m + direction * step * STEP_M) * 10) / 10;
  const first = Math.ceil(LEAST_LEG_M / STEP_M);

  // Step by step: where the camera's reach ends, the shift can fall again, since a new balance would do little better.
  for (let step = first; step <= steps; step++) {
    if (shift(last_m, at(step)) > tolerance) return at(step);
  }
  return undefined;
}
