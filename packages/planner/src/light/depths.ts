import type { Scene } from "../scene/scene.js";

/** How many depths stand for a range: both ends and five between. */
const DEPTHS_IN_RANGE = 7;

/** The depths at which a scene is computed: one, or seven equally spaced ones over the range, shallow first. */
export function depthsOf({ min_depth_m, max_depth_m }: Scene): number[] {
  if (max_depth_m === min_depth_m) return [min_depth_m];
  const step = (max_depth_m - min_depth_m) / (DEPTHS_IN_RANGE - 1);
  return Array.from({ length: DEPTHS_IN_RANGE }, (_, i) =>
    i === DEPTHS_IN_RANGE - 1 ? max_depth_m : min_depth_m + i * step,
  );
}
