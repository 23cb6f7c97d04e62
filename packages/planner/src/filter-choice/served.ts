import { itemAt, lastOf, mapBoth, type NonEmpty } from "../lists/non-empty.js";

export interface Served {
  from_m: number;
  to_m: number;
}

/**
 * The part of the range, from its shallowest to its deepest point, in which a candidate leaves less error than another, both by depth, with the
 * bounds interpolated between the depths that were computed; undefined where nowhere.
 */
export function servedBy(
  depths: Readonly<NonEmpty<number>>,
  of: Readonly<NonEmpty<number>>,
  than: Readonly<NonEmpty<number>>,
): Served | undefined {
  const lead = mapBoth(than, of, (theirs, ours) => theirs - ours);
  const first = lead.findIndex((l) => l > 0);
  if (first < 0) return undefined;
  const last = lead.length - 1 - [...lead].reverse().findIndex((l) => l > 0);
  const at = (d: number) => ({ depth_m: itemAt(depths, d), lead: itemAt(lead, d) });
  const crossing = (inside: number, outside: number): number => {
    const [from, to] = [at(inside), at(outside)];
    return from.depth_m + ((to.depth_m - from.depth_m) * from.lead) / (from.lead - to.lead);
  };
  return {
    from_m: first === 0 ? depths[0] : crossing(first, first - 1),
    to_m: last === depths.length - 1 ? lastOf(depths) : crossing(last, last + 1),
  };
}
