/** The depths at which to balance again, so that the colour shift since the last balance stays under a tolerance. */
import { handDepths } from "../light/hand-depth.js";
import type { ShiftBetween } from "./shift-between.js";
import { spreadAlong } from "./spread.js";

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

/** What a diver has hands and time for, beyond what the light asks for. */
export interface Hands {
  /** At most so many on one way: where they would be more, they are spread so as to leave the least. */
  most?: number;
  /** None is shallower. */
  from_m?: number;
  /**
   * A last stretch of so many metres is not left under a cast that is seen and that a balance takes out, though the tolerance would bear
   * it: one more is made, or they are spread where there is no time for it.
   */
  longest?: { stretch_m: number; seen: number };
}

/** Balances on the way from one depth to another, at depths that a diver can hit, each just before the shift is beyond the tolerance. */
export function balancesAlong(
  way: Way,
  tolerance: number,
  shift: ShiftBetween,
  { most = Infinity, from_m = 0, longest }: Hands = {},
): Balances {
  const stops = handDepths(way.from_m, way.to_m);
  const mayBalance = (at: number, last: number): boolean =>
    at >= from_m &&
    Math.abs(at - last) >= LEAST_APART_M &&
    (way.closed !== true || Math.abs(way.to_m - at) >= LEAST_APART_M);
  const balances = within(way, tolerance, shift, { stops, mayBalance });
  const { depths_m } = balances;
  const isEnough =
    depths_m.length <= most && !(longest && isLeftLong(way, balances, { stops, shift, longest }));
  if (isEnough || most === 0) return balances;
  if (depths_m.length < most) {
    const last = depths_m.at(-1) ?? way.balanced_m;
    const rest = depths_m.length > 0 ? stops.slice(stops.indexOf(last) + 1) : stops;
    const more = spreadAlong({ ...way, balanced_m: last, stops: rest, mayBalance }, 1, shift);
    return { ...balances, depths_m: [...depths_m, ...more] };
  }
  const spread = spreadAlong({ ...way, stops, mayBalance }, most, shift);
  const shifts = spread.map((at, i) => shift(spread[i - 1] ?? way.balanced_m, at));
  return { depths_m: spread, reached: Math.max(tolerance, ...shifts) };
}

interface Left {
  stops: readonly number[];
  shift: ShiftBetween;
  longest: NonNullable<Hands["longest"]>;
}

/** Whether the last stretch is long, and a balance on it would take out a cast that is seen. */
function isLeftLong(
  { balanced_m, from_m, to_m, closed }: Way,
  { depths_m }: Balances,
  { stops, shift, longest }: Left,
): boolean {
  const last = depths_m.at(-1);
  if (closed || Math.abs(to_m - (last ?? from_m)) < longest.stretch_m) return false;
  const rest = last === undefined ? stops : stops.slice(stops.indexOf(last) + 1);
  return Math.max(...rest.map((at) => shift(last ?? balanced_m, at))) >= longest.seen;
}

function within(
  { balanced_m, to_m }: Way,
  tolerance: number,
  shift: ShiftBetween,
  { stops, mayBalance }: { stops: readonly number[]; mayBalance: (at: number, last: number) => boolean },
): Balances {
  const depths_m: number[] = [];
  let reached = tolerance;
  let last = balanced_m;
  for (const [i, at] of stops.entries()) {
    if (Math.max(shift(last, at), shift(last, stops[i + 1] ?? to_m)) <= tolerance) continue;
    reached = Math.max(reached, shift(last, at));
    if (!mayBalance(at, last)) continue;
    depths_m.push(at);
    last = at;
  }
  return { depths_m, reached };
}
