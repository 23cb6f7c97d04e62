import { limitsOf, settingsFor } from "../camera/exposure-settings.js";
import { checkpoint } from "../checkpoint.js";
import type { Reason } from "../codes/coded.js";
import { reasonsOf } from "../codes/coded.js";
import type { ClipReasons } from "../codes/dive-timelines.js";
import { sensitivityFor } from "../exposure-loss/sensitivity.js";
import { itemAt } from "../lists/non-empty.js";
import type { Estimate } from "../result/common.js";
import type { ClipBalance, TimelineClip } from "../result/dive-timelines.js";
import type { Scene } from "../scene/scene.js";
import { mapFalling } from "../uncertainty/percentiles.js";
import type { LensStates } from "./actions.js";
import { momentsAlong } from "./along.js";
import { castsAt, isOnCard, type Spot } from "./balances.js";
import type { DiveWorld } from "./dive-light.js";
import type { DiveClip } from "./plan.js";
import type { Profile } from "./profile.js";

const reason = reasonsOf<ClipReasons>();

/** What a clip is judged by, found in the nominal world. */
export interface SeenClip {
  clip: DiveClip;
  min_depth_m: number;
  max_depth_m: number;
  /** Time-weighted means, and how far from darkest to brightest. */
  ev100: number;
  redLoss: number;
  span_stops: number;
  /** A moment whose light is near the mean: what is not known is looked at there. */
  middle: Spot;
  /** Where a new balance would gain most, and where the last one was made. */
  worst: Spot;
  balanced: Spot | undefined;
  /** Since the clip began, when the shift first passed the tolerance. */
  lostAfter_s: number | undefined;
  isSet: boolean;
}

/** What is worked out of a clip in each state of the world. */
export interface ClipFigures {
  ev100: number;
  redLoss: number;
  before: number;
  after: number;
  shift: number;
}

interface Dive {
  scene: Scene;
  profile: Profile;
  states: LensStates;
  tolerance: number;
}

export function spotAt({ profile, states }: Pick<Dive, "profile" | "states">, time_s: number): Spot {
  return {
    lens: states.filteredAt(time_s) ? "filtered" : "bare",
    time_s,
    depth_m: profile.depthAt(time_s),
  };
}

/** Where white was last balanced before a time, with what was on the lens then. */
function balanceBefore(dive: Dive, time_s: number): Spot | undefined {
  const balanced_s = dive.states.balancedAt(time_s);
  return balanced_s === undefined ? undefined : spotAt(dive, balanced_s);
}

export function seeClip(clip: DiveClip, dive: Dive, world: DiveWorld): SeenClip {
  const { scene, profile, states, tolerance } = dive;
  const changes = states.told.actions.map(({ time_s }) => time_s);
  const moments = momentsAlong(profile, clip, changes);
  const evs: number[] = [];
  const losses: number[] = [];
  let worst = spotAt(dive, clip.from_s);
  let balanced = balanceBefore(dive, clip.from_s);
  let most = -Infinity;
  let lostAfter_s: number | undefined;
  let isSet = true;
  for (const { time_s, depth_m } of moments) {
    checkpoint();
    const spot: Spot = { lens: states.filteredAt(time_s) ? "filtered" : "bare", time_s, depth_m };
    const { ev100, redLoss } = world.at(spot.lens, time_s, depth_m);
    evs.push(ev100);
    losses.push(redLoss);
    const last = balanceBefore(dive, time_s);
    if (last === undefined && isOnCard(scene)) {
      isSet = false;
      continue;
    }
    const { before, after } = castsAt(scene, world, last, spot);
    const shift = before - after;
    if (shift > tolerance) lostAfter_s ??= time_s - clip.from_s;
    if (shift <= most) continue;
    most = shift;
    worst = spot;
    balanced = last;
  }
  const times = moments.map(({ time_s }) => time_s);
  const depths = moments.map(({ depth_m }) => depth_m);
  const ev100 = meanOver(times, evs);
  const nearest = evs.reduce(
    (best, ev, i) => (Math.abs(ev - ev100) < Math.abs(itemAt(evs, best) - ev100) ? i : best),
    0,
  );
  return {
    clip,
    min_depth_m: Math.min(...depths),
    max_depth_m: Math.max(...depths),
    ev100,
    redLoss: meanOver(times, losses),
    span_stops: Math.max(...evs) - Math.min(...evs),
    middle: spotAt(dive, itemAt(times, nearest)),
    worst,
    balanced,
    lostAfter_s,
    isSet,
  };
}

/** Mean of what changes evenly between its moments. */
function meanOver(times: readonly number[], values: readonly number[]): number {
  const length = itemAt(times, times.length - 1) - itemAt(times, 0);
  if (length <= 0) return itemAt(values, 0);
  let sum = 0;
  for (let i = 1; i < times.length; i++)
    sum += ((itemAt(values, i) + itemAt(values, i - 1)) / 2) * (itemAt(times, i) - itemAt(times, i - 1));
  return sum / length;
}

/** @param nominal the world without any shift, in which the means were taken */
export function clipIn(seen: SeenClip, scene: Scene, world: DiveWorld, nominal: DiveWorld): ClipFigures {
  const { lens, time_s, depth_m } = seen.middle;
  const here = world.at(lens, time_s, depth_m);
  const middle = nominal.at(lens, time_s, depth_m);
  const { before, after } = castsAt(scene, world, seen.balanced, seen.worst);
  return {
    ev100: seen.ev100 + here.ev100 - middle.ev100,
    redLoss: seen.redLoss + here.redLoss - middle.redLoss,
    before,
    after,
    shift: before - after,
  };
}

const atLeastZero = ({ low, likely, high }: Estimate): Estimate => ({
  low: Math.max(0, low),
  likely: Math.max(0, likely),
  high: Math.max(0, high),
});

export function tellClip(
  seen: SeenClip,
  estimates: Record<keyof ClipFigures, Estimate>,
  { scene, tolerance }: Pick<Dive, "scene" | "tolerance">,
): TimelineClip {
  const { clip, isSet } = seen;
  const { iso, f_number, shutter_s, off_by_stops } = settingsFor(
    sensitivityFor(estimates.ev100.likely),
    limitsOf(scene),
  );
  const balance = isSet ? verdictOf(estimates.shift, tolerance) : "not_set";
  return {
    ...(clip.id === undefined ? {} : { id: clip.id }),
    from_s: clip.from_s,
    to_s: clip.to_s,
    min_depth_m: seen.min_depth_m,
    max_depth_m: seen.max_depth_m,
    through_filter: seen.middle.lens === "filtered",
    exposure_value_ev100: estimates.ev100,
    exposure_span_stops: seen.span_stops,
    iso,
    f_number,
    shutter_s,
    off_by_stops,
    red_left_percent: mapFalling(atLeastZero(estimates.redLoss), (stops) => 100 * 2 ** -stops),
    balance,
    ...(isSet ? { cast_delta_e00: atLeastZero(estimates.before) } : {}),
    cast_if_balanced_delta_e00: atLeastZero(estimates.after),
    reason: whyOf(balance, seen, estimates.shift, tolerance),
  };
}

/** Whether the shift stays within what is let pass: close where neither can be said with nine chances in ten. */
const verdictOf = ({ low, high }: Estimate, tolerance: number): ClipBalance =>
  high <= tolerance ? "held" : low > tolerance ? "lost" : "close";

function whyOf(
  balance: ClipBalance,
  { lostAfter_s = 0 }: SeenClip,
  { likely }: Estimate,
  tolerance_delta_e00: number,
): Reason<ClipReasons> {
  const figures = { shift_delta_e00: Math.max(0, likely), tolerance_delta_e00 };
  if (balance === "not_set") return reason("clip_balance_not_set", "computed");
  if (balance === "held") return reason("clip_balance_held", "computed", figures);
  if (balance === "close") return reason("clip_balance_close", "computed", figures);
  return reason("clip_balance_lost", "computed", { ...figures, after_s: lostAfter_s });
}
