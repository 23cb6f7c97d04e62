import type { SceneSize } from "./about.js";

// What calculations cost that a whole plan has in it: here, since the plan's descriptor must not lead to theirs, which would tie
// them together where one is computed alone. Units as in `About`.

/** Subject and picture, and the depth, searched for, at which light would be enough. */
export const exposureCost = ({ depths, lamps }: SceneSize): number => depths * (4 + 1.5 * lamps);

export const mixedCost = ({ depths, lamps }: SceneSize): number => depths * (1 + 10 * lamps);

export const balanceCost = ({ depths, range_m, lamps }: SceneSize): number =>
  depths * 4 + range_m * (3 + 0.9 * lamps) + 30 * lamps;

/** Red is followed down the water whatever the depths that are asked for. */
export const recoveryCost = ({ depths, lamps }: SceneSize): number => 120 + depths * (5 + 5 * lamps);

export const choiceCost = ({ depths, filters, lamps }: SceneSize): number =>
  depths * filters * 1.6 + 30 + depths * lamps;

/** In each state of the world the best of what is owned at three depths, the others at one. */
export const rankingCost = ({ depths, owned }: SceneSize): number =>
  13 * (owned + (depths > 1 ? 2 * Math.min(owned, 4) : 0));

/** On a mount a plan may have to be made once more, of what fits. */
export const planCost = (size: SceneSize): number =>
  (size.mounted ? 2 : 1) *
  (choiceCost(size) +
    2 * mixedCost(size) +
    size.legs * (balanceCost(size) + exposureCost(size)) +
    recoveryCost(size));
