import type { EqualDepths } from "@sunfathom/optics";
import { type NonEmpty, nonEmpty } from "../lists/non-empty.js";
import type { Scene } from "../scene/scene.js";

/** How many depths stand for a range: both ends and five between. */
const DEPTHS_IN_RANGE = 7;

/** The depths at which a scene is computed: one, or seven equally spaced ones over the range, shallow first. */
export function equalDepthsOf({ min_depth_m, max_depth_m }: Scene): EqualDepths {
  const count = max_depth_m === min_depth_m ? 1 : DEPTHS_IN_RANGE;
  return { first_m: min_depth_m, step_m: (max_depth_m - min_depth_m) / (DEPTHS_IN_RANGE - 1), count };
}

/** The same as a list. */
export function depthsOf(scene: Scene): NonEmpty<number> {
  const { first_m, step_m, count } = equalDepthsOf(scene);
  const depths_m = Array.from({ length: count }, (_, i) =>
    i === count - 1 ? scene.max_depth_m : first_m + i * step_m,
  );
  return nonEmpty(depths_m, "depths");
}
