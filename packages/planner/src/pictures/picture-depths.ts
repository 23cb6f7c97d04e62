import { type NonEmpty, nonEmpty } from "../lists/non-empty.js";
import type { Scene } from "../scene/scene.js";

/** Rows of a picture at most. */
const MOST_ROWS = 8;
/** What a diver can tell apart, m: as depths are shown. */
const stepAt = (depth_m: number): number => (depth_m < 5 ? 0.5 : 1);

/** Round depths from near the surface to the deepest that is filmed, which is as it is: rows of a picture, no two with the same label. */
export function pictureDepths({ max_depth_m }: Pick<Scene, "max_depth_m">): NonEmpty<number> {
  const first_m = Math.min(1, max_depth_m / 2);
  const rounded = Array.from({ length: MOST_ROWS - 1 }, (_, i) => {
    const depth_m = first_m + ((max_depth_m - first_m) * i) / (MOST_ROWS - 1);
    return Math.round(depth_m / stepAt(depth_m)) * stepAt(depth_m);
  });
  const apart = [...new Set(rounded)].filter(
    (depth_m) => depth_m > 0 && depth_m <= max_depth_m - stepAt(max_depth_m),
  );
  return nonEmpty([...apart, max_depth_m], "depths");
}
