/** The depths at which to balance again, so that the colour shift since the last balance stays under a tolerance. */
import { handDepths } from "../light/hand-depth.js";

/** Cast on a grey at one depth that a balance made at another leaves and a new one would take out, in CIEDE2000. */
export type ShiftBetween = (balanced_m: number, seen_m: number) => number;

/** Closer than this a diver has hardly made one balance before the next is due. Common practice, no published source. */
export const LEAST_APART_M = 2;

export interface Way {
  /** Where the last balance was made. */
  balanced_m: number;
  from_m: number;
  to_m: number;
  /** Whether a balance follows at the end: then none is made just before it. */
  closed?: boolean;
}

export interface Balances {
  /** In the order in which they are made; empty where the last balance serves all the way. */
  depths_m: number[];
  /** The most that the shift reaches: the tolerance, or more where balances would come too close. */
  reached: number;
}

/** Balances on the way from one depth to another, at depths that a diver can hit, each just before the shift is beyond the tolerance. */
export function balancesAlong(
  { balanced_m, from_m, to_m, closed = false }: Way,
  tolerance: number,
  shift: ShiftBetween,
): Balances {
  const stops = handDepths(from_m, to_m);
  const depths_m: number[] = [];
  let reached = tolerance;
  let last = balanced_m;
  for (const [i, at] of stops.entries()) {
    if (Math.max(shift(last, at), shift(last, stops[i + 1] ?? to_m)) <= tolerance) continue;
    const apart = Math.min(Math.abs(at - last), closed ? Math.abs(to_m - at) : Infinity);
    reached = Math.max(reached, shift(last, at));
    if (apart < LEAST_APART_M) continue;
    depths_m.push(at);
    last = at;
  }
  return { depths_m, reached };
}
