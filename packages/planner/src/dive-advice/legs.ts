import type { Holds } from "../codes/steps.js";
import { type Exposures, exposuresOf } from "../exposure-loss/exposures.js";
import { conditionsOf } from "../light/conditions.js";
import { handDepth, handDepths } from "../light/hand-depth.js";
import { underwater } from "../light/underwater.js";
import { lastOf, type NonEmpty, nonEmpty } from "../lists/non-empty.js";
import { VISIBLE_SPLIT_DELTA_E00 } from "../mixed-light/lights.js";
import type { ExposureAtDepth } from "../result/exposure-loss.js";
import type { FilterChoiceFigures } from "../result/filter-choice.js";
import type { WhiteBalanceDecision } from "../result/white-balance.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { avoidableCast } from "../white-balance/avoidable-cast.js";
import { decideBalance, toleranceFor } from "../white-balance/decide.js";
import { type Balances, balancesAlong, LEAST_APART_M } from "../white-balance/rebalance.js";

/** A stretch of the dive with or without the filter on the lens: one, unless the mount lets the diver change at depth. */
export interface Leg {
  scene: Scene;
  filtered: boolean;
  exposure: Exposures;
  balance: WhiteBalanceDecision;
  /** Where it begins going down, and coming up, as a diver hits it. */
  top_m: number;
  bottom_m: number;
  /** Where the first balance is made going down: where the leg begins, but deeper where nobody holds still there. */
  first_m: number;
  /** Balances after the one that is made where the leg begins going down. */
  down: Balances;
  /** Coming up: after the one where the leg begins, in the deepest leg after the last one going down. */
  up: Balances;
  /** The most that a new balance would take out below the last one going down, CIEDE2000. */
  left: number;
}

/**
 * On one way no more than leave time to film, and none so shallow that nobody hovers there with a card in hand. Common practice, no
 * published source.
 */
const HANDS = { most: 3, from_m: 2 };
/** Nobody films so far down under a cast that is seen and that one card takes out: a judgement, left to a caller who has a tolerance. */
const LONGEST = { stretch_m: 6, seen: VISIBLE_SPLIT_DELTA_E00 };

/** How white is balanced on one way of a dive. */
export const handsOf = ({ balance_tolerance_delta_e00 }: Scene): Parameters<typeof balancesAlong>[3] =>
  balance_tolerance_delta_e00 === undefined ? { ...HANDS, longest: LONGEST } : HANDS;

type Ends = readonly [from_m: number, to_m: number];

function legOf(scene: Scene, filtered: boolean, [min_depth_m, max_depth_m]: Ends): Leg {
  const part = { ...scene, min_depth_m, max_depth_m };
  const conditions = conditionsOf(part);
  const balance = decideBalance(part);
  const shift = avoidableCast(conditions, underwater(conditions, NOMINAL));
  const tolerance = toleranceFor(scene);
  const [top_m, bottom_m] = [handDepth(min_depth_m, part), handDepth(max_depth_m, part)];
  const isDeepest = max_depth_m === scene.max_depth_m;
  const room_m = bottom_m - (isDeepest ? 0 : LEAST_APART_M);
  const first_m = firstOf(top_m, room_m, (at_m) => shift(at_m, top_m) <= tolerance);
  // What is set once, or sets itself, is not set again.
  const isOnCard = (scene.white_balance_mode ?? "card") === "card";
  const hands = handsOf(scene);
  const along = (way: Parameters<typeof balancesAlong>[0]): Balances =>
    isOnCard ? balancesAlong(way, tolerance, shift, hands) : { depths_m: [], reached: tolerance };
  const down = along({ balanced_m: first_m, from_m: first_m, to_m: max_depth_m, closed: !isDeepest });
  const last_m = down.depths_m.at(-1) ?? first_m;
  const left = Math.max(...handDepths(last_m, bottom_m).map((at_m) => shift(last_m, at_m)));
  const balanced_m = isDeepest ? last_m : bottom_m;
  const up = along({
    balanced_m,
    from_m: bottom_m,
    to_m: min_depth_m,
    closed: min_depth_m !== scene.min_depth_m,
  });
  const ends = { top_m, bottom_m, first_m };
  return { scene: part, filtered, exposure: exposuresOf(part), balance, ...ends, down, up, left };
}

/** In the surge close to the surface no hand holds a card still: the first balance waits for deeper water where it then serves above, too. */
const firstOf = (top_m: number, room_m: number, serves: (at_m: number) => boolean): number =>
  top_m < HANDS.from_m && room_m >= HANDS.from_m && serves(HANDS.from_m) ? HANDS.from_m : top_m;

/** Where the last of several balances is to serve so long a stretch, that asks for a reason. */
const LONG_M = 3;
/** Missing less than this of a balance leaves a cast that is hardly seen: half a click of a third of a stop. */
const LIMIT_STOPS = 1 / 6;

/** What the last balance going down serves, and why; absent where the dive ends soon below it, or where none is made on a card. */
export function holdsBelow({ scene, balance, first_m, bottom_m, down, left }: Leg): { holds?: Holds } {
  if ((scene.white_balance_mode ?? "card") !== "card") return {};
  const again_m = down.depths_m.at(-1);
  const stretch_m = bottom_m - (again_m ?? first_m);
  if (again_m === undefined ? stretch_m === 0 : stretch_m < LONG_M) return {};
  const isAtLimit = lastOf(balance.depths).short_of_reach_stops >= LIMIT_STOPS;
  const because =
    left < VISIBLE_SPLIT_DELTA_E00 && isAtLimit
      ? "at_limit"
      : isAtLimit
        ? "limit"
        : left <= toleranceFor(scene)
          ? "little"
          : undefined;
  return { holds: { to_m: bottom_m, ...(because ? { because } : {}) } };
}

/**
 * A stretch shorter than two balances take is left to its neighbour.
 * @param bare the scene as it is filmed without the filter, @param filtered with it
 */
export function legsOf(bare: Scene, filtered: Scene, filter: FilterChoiceFigures): NonEmpty<Leg> {
  const { min_depth_m, max_depth_m } = bare;
  const { serves_min_depth_m, serves_max_depth_m, change_depths_m } = filter;
  if (!change_depths_m || serves_min_depth_m === undefined || serves_max_depth_m === undefined) {
    return [legOf(filtered, filter.filter_kind !== "none", [min_depth_m, max_depth_m])];
  }
  const in_m = handDepth(serves_min_depth_m, bare);
  const out_m = handDepth(serves_max_depth_m, bare);
  const from_m = in_m - min_depth_m < LEAST_APART_M ? min_depth_m : in_m;
  const to_m = max_depth_m - out_m < LEAST_APART_M || out_m - from_m < LEAST_APART_M ? max_depth_m : out_m;
  const above = from_m > min_depth_m ? [legOf(bare, false, [min_depth_m, from_m])] : [];
  const below = to_m < max_depth_m ? [legOf(bare, false, [to_m, max_depth_m])] : [];
  return nonEmpty([...above, legOf(filtered, true, [from_m, to_m]), ...below], "legs");
}

/** How the filter is changed between legs; there is more than one only where the mount allows it. */
export const mountOf = ({ scene }: Leg): "flip" | "clip_on" =>
  scene.filter_change_underwater === "clip_on" ? "clip_on" : "flip";

/** Every depth at which to balance, going down and coming up, changes of filter included. */
export const balancesDown = (legs: readonly Leg[]): number[] =>
  legs.flatMap(({ first_m, down }) => [first_m, ...down.depths_m]);

export const balancesUp = (legs: readonly Leg[]): number[] =>
  [...legs].reverse().flatMap(({ bottom_m, up }, i) => [...(i === 0 ? [] : [bottom_m]), ...up.depths_m]);

/** The shallow end of the first leg, and the deep end of the last. */
export const startOf = (legs: Readonly<NonEmpty<Leg>>): ExposureAtDepth => legs[0].exposure.depths[0];
export const endOf = (legs: Readonly<NonEmpty<Leg>>): ExposureAtDepth => lastOf(lastOf(legs).exposure.depths);
