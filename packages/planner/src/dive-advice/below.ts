import type { LensFilterStep } from "../codes/steps.js";
import { handDepth } from "../light/hand-depth.js";
import type { Decisions } from "./decisions.js";
import { rankOf } from "./ranks.js";

/**
 * Where the colours rank worse at the deep end than over the range: from where on, and what is left there, be it the error of the chart
 * or the cast on grey that the camera's balance leaves. What a plan promises is to hold down to a depth that it names.
 */
export function worseBelow({ filter, legs, filmed }: Decisions): LensFilterStep["below"] {
  const filtered = legs.find((leg) => leg.filtered) ?? legs[0];
  const { min_depth_m, max_depth_m } = filtered.scene;
  if (min_depth_m === max_depth_m) return undefined;
  const over = rankOf(filter.colour_error_delta_e00.likely);
  // Both stand at the same depths where the filter stays on; elsewhere at the nearest.
  const castAt = (depth_m: number): number =>
    filtered.balance.depths.reduce((near, other) =>
      Math.abs(other.depth_m - depth_m) < Math.abs(near.depth_m - depth_m) ? other : near,
    ).cast_left_delta_e00;
  const left = filter.depths
    .filter(({ depth_m }) => depth_m >= min_depth_m && depth_m <= max_depth_m)
    .map(({ depth_m, advised_colour_error_delta_e00 }) => ({
      depth_m,
      error: Math.max(advised_colour_error_delta_e00, castAt(depth_m)),
    }));
  const deepest = left.at(-1);
  if (!deepest || rankOf(deepest.error) <= over) return undefined;
  const good = left.filter(({ error }) => rankOf(error) <= over).at(-1);
  return { from_m: handDepth(good?.depth_m ?? min_depth_m, filmed), error: deepest.error };
}
