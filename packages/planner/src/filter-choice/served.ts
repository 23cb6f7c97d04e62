import type { Judged } from "./merits.js";

export interface Served {
  from_m: number;
  to_m: number;
}

/**
 * The part of the range, from its shallowest to its deepest point, in which a candidate leaves less error than another, with the
 * bounds interpolated between the depths that were computed; undefined where nowhere.
 */
export function servedBy(depths: readonly number[], of: Judged, than: Judged): Served | undefined {
  const lead = depths.map((_, d) => than.merits[d].delta_e00 - of.merits[d].delta_e00);
  const first = lead.findIndex((l) => l > 0);
  if (first < 0) return undefined;
  const last = lead.length - 1 - [...lead].reverse().findIndex((l) => l > 0);
  const crossing = (inside: number, outside: number): number =>
    depths[inside] + ((depths[outside] - depths[inside]) * lead[inside]) / (lead[inside] - lead[outside]);
  return {
    from_m: first === 0 ? depths[0] : crossing(first, first - 1),
    to_m: last === depths.length - 1 ? depths[last] : crossing(last, last + 1),
  };
}
