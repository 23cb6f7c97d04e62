import { limitsOf, settingsFor } from "../camera/exposure-settings.js";
import { checkpoint } from "../checkpoint.js";
import type { Reason } from "../codes/coded.js";
import { reasonsOf } from "../codes/coded.js";
import type { MomentReasons } from "../codes/dive-timelines.js";
import { sensitivityFor } from "../exposure-loss/sensitivity.js";
import { itemAt } from "../lists/non-empty.js";
import type { Estimate } from "../result/common.js";
import type { MomentAction, TimelineMoment } from "../result/dive-timelines.js";
import type { Scene } from "../scene/scene.js";
import type { LensStates } from "./actions.js";
import { momentsAlong } from "./along.js";
import { castsAt, isOnCard, type Spot } from "./balances.js";
import { spotAt } from "./clips.js";
import type { DiveWorld } from "./dive-light.js";
import type { Profile } from "./profile.js";

const reason = reasonsOf<MomentReasons>();

/** The exposure is set anew when what is metered has moved by so many stops: a judgement. */
const EXPOSURE_MOVED_STOPS = 1;
/** New exposures that are listed. */
const MOST_EXPOSURES = 100;

export interface SeenMoment {
  action: MomentAction;
  /** With what is on the lens from then on. */
  spot: Spot;
  /** Of a balance, the one before it. */
  balanced: Spot | undefined;
  /** Of a balance, whether the filter has changed since that. */
  changed: boolean;
  /** Of an exposure, stops since it was last set. */
  moved_stops: number;
}

export interface MomentFigures {
  ev100: number;
  before: number;
  after: number;
}

interface Dive {
  scene: Scene;
  profile: Profile;
  states: LensStates;
  tolerance: number;
  /** Whether what is told was done, or was to be done. */
  isDone: boolean;
}

/** What was to be done, or was done, with the exposures that go with it. */
export function seeMoments(dive: Dive, world: DiveWorld): { moments: SeenMoment[]; leftOut: number } {
  const { states, scene } = dive;
  const actions = states.told.actions.map(({ time_s, event }, i): SeenMoment => {
    const before_s = event === "balance" ? states.balancedBefore(i) : undefined;
    return {
      action: event,
      spot: spotAt(dive, time_s),
      balanced: before_s === undefined ? undefined : spotAt(dive, before_s),
      changed: event === "balance" && states.changedBefore(i),
      moved_stops: 0,
    };
  });
  if (scene.exposure_mode === "auto") return { moments: actions, leftOut: 0 };
  const { exposures, leftOut } = seeExposures(dive, world);
  // Of one moment, what is done comes before what is set for it.
  const moments = [...actions, ...exposures].sort((a, b) => a.spot.time_s - b.spot.time_s);
  return { moments, leftOut };
}

function seeExposures(
  { scene, profile, states }: Dive,
  world: DiveWorld,
): { exposures: SeenMoment[]; leftOut: number } {
  const exposures: SeenMoment[] = [];
  let leftOut = 0;
  let set: number | undefined;
  const actions = states.told.actions;
  let next = 0;
  const whole = { from_s: profile.first_s, to_s: profile.last_s };
  for (const { time_s, depth_m } of momentsAlong(
    profile,
    whole,
    actions.map((action) => action.time_s),
  )) {
    if (depth_m < scene.min_depth_m || depth_m > scene.max_depth_m) continue;
    checkpoint();
    const spot: Spot = { lens: states.filteredAt(time_s) ? "filtered" : "bare", time_s, depth_m };
    const { ev100 } = world.at(spot.lens, time_s, depth_m);
    let acted = false;
    // Whoever balances or changes the filter sets the exposure with it.
    for (; next < actions.length && itemAt(actions, next).time_s <= time_s; next++) acted = true;
    if (set === undefined || acted) set = ev100;
    const moved_stops = ev100 - set;
    if (Math.abs(moved_stops) < EXPOSURE_MOVED_STOPS) continue;
    set = ev100;
    if (exposures.length === MOST_EXPOSURES) leftOut += 1;
    else exposures.push({ action: "exposure", spot, balanced: undefined, changed: false, moved_stops });
  }
  return { exposures, leftOut };
}

export function momentIn(seen: SeenMoment, scene: Scene, world: DiveWorld): MomentFigures {
  const { lens, time_s, depth_m } = seen.spot;
  const { ev100 } = world.at(lens, time_s, depth_m);
  if (seen.action !== "balance" || !isOnCard(scene)) return { ev100, before: 0, after: 0 };
  const { before, after } = castsAt(scene, world, seen.balanced, seen.spot);
  return { ev100, before, after };
}

const atLeastZero = ({ low, likely, high }: Estimate): Estimate => ({
  low: Math.max(0, low),
  likely: Math.max(0, likely),
  high: Math.max(0, high),
});

export function tellMoment(
  seen: SeenMoment,
  { ev100, before, after }: Record<keyof MomentFigures, Estimate>,
  dive: Dive,
): TimelineMoment {
  const { scene } = dive;
  const { iso, f_number, shutter_s, off_by_stops } = settingsFor(
    sensitivityFor(ev100.likely),
    limitsOf(scene),
  );
  const isBalance = seen.action === "balance" && isOnCard(scene);
  return {
    time_s: seen.spot.time_s,
    depth_m: seen.spot.depth_m,
    action: seen.action,
    exposure_value_ev100: ev100,
    iso,
    f_number,
    shutter_s,
    off_by_stops,
    ...(isBalance && seen.balanced ? { cast_before_delta_e00: atLeastZero(before) } : {}),
    ...(isBalance ? { cast_after_delta_e00: atLeastZero(after) } : {}),
    reason: whyOf(seen, before.likely - after.likely, dive),
  };
}

function whyOf(seen: SeenMoment, shift: number, { tolerance, isDone }: Dive): Reason<MomentReasons> {
  const { depth_m } = seen.spot;
  if (seen.action === "exposure") return reason("moment_exposure", "judgement", { stops: seen.moved_stops });
  if (seen.action !== "balance")
    return reason(seen.action === "filter_on" ? "moment_filter_on" : "moment_filter_off", "computed", {
      depth_m,
    });
  if (seen.balanced === undefined) return reason("moment_first_balance", "computed");
  if (seen.changed) return reason("moment_balance_behind_change", "computed");
  const figures = { shift_delta_e00: Math.max(0, shift), tolerance_delta_e00: tolerance };
  return isDone
    ? reason("moment_balance_done", "computed", figures)
    : reason("moment_balance_again", "computed", figures);
}
