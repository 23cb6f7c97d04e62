import { exposureLoss } from "../exposure-loss/exposure-loss.js";
import { lastOf, type NonEmpty, nonEmpty } from "../lists/non-empty.js";
import type { ExposureAtDepth, ExposureLossAnswer } from "../result/exposure-loss.js";
import type { FilterChoiceAnswer } from "../result/filter-choice.js";
import type { WhiteBalanceDecision } from "../result/white-balance.js";
import type { Scene } from "../scene/scene.js";
import { decideBalance } from "../white-balance/decide.js";

/** A stretch of the dive with or without the filter on the lens: one, unless the mount lets the diver change at depth. */
export interface Leg {
  scene: Scene;
  filtered: boolean;
  exposure: ExposureLossAnswer;
  balance: WhiteBalanceDecision;
}

/** Closer than this to the depth at which the filter is changed, a balance of its own is left to the one made there. */
const LEAST_LEG_M = 0.5;

function leg(scene: Scene, filtered: boolean, min_depth_m: number, max_depth_m: number): Leg {
  const part = { ...scene, min_depth_m, max_depth_m };
  return { scene: part, filtered, exposure: exposureLoss(part), balance: decideBalance(part) };
}

/** @param bare the scene as it is filmed without the filter, @param filtered with it. */
export function legsOf(bare: Scene, filtered: Scene, filter: FilterChoiceAnswer): NonEmpty<Leg> {
  const { min_depth_m, max_depth_m } = bare;
  const { serves_min_depth_m: from_m, serves_max_depth_m: to_m, change_depths_m } = filter;
  if (!change_depths_m || from_m === undefined || to_m === undefined) {
    return [leg(filtered, filter.filter_kind !== "none", min_depth_m, max_depth_m)];
  }
  const above = from_m > min_depth_m ? [leg(bare, false, min_depth_m, from_m)] : [];
  const below = to_m < max_depth_m ? [leg(bare, false, to_m, max_depth_m)] : [];
  return nonEmpty([...above, leg(filtered, true, from_m, to_m), ...below], "legs");
}

/** How the filter is changed between legs; there is more than one only where the mount allows it. */
export const mountOf = ({ scene }: Leg): "flip" | "clip_on" =>
  scene.filter_change_underwater === "clip_on" ? "clip_on" : "flip";

/** Every depth at which to balance, going down and coming up, changes of filter included. */
export const balancesDown = (legs: readonly Leg[]): number[] =>
  legs.flatMap(({ balance }) => balance.balance_depths_descending_m);

export const balancesUp = (legs: readonly Leg[]): number[] =>
  [...legs].reverse().flatMap((l) => balancesUpIn(l, legs[0]));

/** Those of one leg: the last ones may lie too close to the change above. */
export const balancesUpIn = ({ balance, scene }: Leg, shallowest: Leg | undefined): number[] =>
  balance.balance_depths_ascending_m.filter(
    (depth_m) => scene === shallowest?.scene || depth_m - scene.min_depth_m >= LEAST_LEG_M,
  );

/** The shallow end of the first leg, and the deep end of the last. */
export const startOf = (legs: Readonly<NonEmpty<Leg>>): ExposureAtDepth => legs[0].exposure.depths[0];
export const endOf = (legs: Readonly<NonEmpty<Leg>>): ExposureAtDepth => lastOf(lastOf(legs).exposure.depths);

/** What changing the filter between two legs is worth in exposure, in stops, at the depth where they meet. */
export function changeStops(above: Leg, below: Leg): number {
  const before = lastOf(above.exposure.depths).exposure_value_ev100.likely;
  return Math.abs(before - below.exposure.depths[0].exposure_value_ev100.likely);
}
