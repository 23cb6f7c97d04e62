import { balanceSources } from "../camera/balance-setting.js";
import { cautionsFor, filterAdvice } from "../cautions/cautions-for.js";
import { checkpoint } from "../checkpoint.js";
import type { Reason } from "../codes/coded.js";
import { reasonsOf } from "../codes/coded.js";
import type { TimelineReasons } from "../codes/dive-timelines.js";
import { type Decisions, decisionsFor } from "../dive-advice/decisions.js";
import { balancesDown, balancesUp } from "../dive-advice/legs.js";
import { withoutFilter } from "../dive-advice/mounted.js";
import { hasLensFilter } from "../light/lens-filter.js";
import { lightSources } from "../light/sources.js";
import type { DiveTimelineResult } from "../result/dive-timelines.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { propagate, shareOfCauses } from "../uncertainty/propagate.js";
import { toleranceFor } from "../white-balance/decide.js";
import { type Actions, doneActions, LensStates, plannedActions } from "./actions.js";
import { isOnCard } from "./balances.js";
import { clipIn, seeClip, tellClip } from "./clips.js";
import { DiveLight, type OnLens } from "./dive-light.js";
import { DRAWN_WITHIN } from "./light-grid.js";
import { marksOf } from "./marks/marks.js";
import { momentIn, seeMoments, tellMoment } from "./moments.js";
import type { TimelinePlan } from "./plan.js";
import { Profile } from "./profile.js";

const reason = reasonsOf<TimelineReasons>();

const SOURCES = ["filter_shapes", "filter_merit", "chart_24", "ciede2000", "iso_2720", "port_radiance"];

/** What was on the lens and on the lamps: as told, or where nothing was told, as the plan has it. */
function scenesOf({ scene, events }: TimelinePlan, { filmed, filter }: Decisions): Record<OnLens, Scene> {
  if (events !== undefined)
    return { bare: withoutFilter(scene), filtered: hasLensFilter(scene) ? scene : withoutFilter(scene) };
  const bare = withoutFilter(filmed);
  return { bare, filtered: filter.filter_kind === "none" ? bare : filmed };
}

/**
 * A dive as it was dived: what was to be done where, and how each clip stands. It looks backwards, and at light and colour alone.
 * @throws SceneProblem for a scene that the model cannot answer for, and where the sun sinks too low in the course of the dive
 */
export function diveTimeline(plan: TimelinePlan): DiveTimelineResult {
  const { scene, samples, clips, events } = plan;
  const decisions = decisionsFor(scene);
  const { legs, filter } = decisions;
  const profile = new Profile(samples);
  const scenes = scenesOf(plan, decisions);
  const light = new DiveLight(scenes, (profile.first_s + profile.last_s) / 2);
  const told: Actions = events
    ? doneActions(events, hasLensFilter(scene))
    : plannedActions(legs, profile, { isOnCard: isOnCard(scene), filmedFrom_s: clips[0]?.from_s });
  const tolerance = toleranceFor(scene);
  const states = new LensStates(told);
  const dive = { scene: scenes.bare, profile, states, tolerance, isDone: events !== undefined };
  const nominal = light.in(NOMINAL);
  const { moments, leftOut } = seeMoments(dive, nominal);
  const seenClips = clips.map((clip) => seeClip(clip, dive, nominal));
  const propagated = propagate((nuisance) => {
    checkpoint();
    const world = light.in(nuisance);
    return {
      moments: moments.map((moment) => momentIn(moment, dive.scene, world)),
      clips: seenClips.map((clip) => clipIn(clip, dive.scene, world, nominal)),
    };
  }, light.causes);
  const { estimates } = propagated;
  const uncertainty = shareOfCauses(
    propagated,
    (figures) => (figures.clips[0] ?? figures.moments[0])?.ev100 ?? 0,
  );
  const reasons: Reason<TimelineReasons>[] = [
    events === undefined
      ? reason("timeline_as_planned", "computed")
      : reason("timeline_as_done", "computed", { events: events.length }),
    reason("timeline_filmed", "computed", {
      min_depth_m: scene.min_depth_m,
      max_depth_m: scene.max_depth_m,
      clips: clips.length,
    }),
    ...(told.notPassed_m.length > 0
      ? [reason("timeline_not_passed", "computed", { depths_m: told.notPassed_m })]
      : []),
    ...(leftOut > 0 ? [reason("timeline_exposures_left_out", "computed", { moments: leftOut })] : []),
    reason("timeline_drawn", "computed", DRAWN_WITHIN),
    reason("timeline_spread_shared", "judgement"),
  ];
  return {
    min_depth_m: scene.min_depth_m,
    max_depth_m: scene.max_depth_m,
    length_s: profile.last_s - profile.first_s,
    done_by: events === undefined ? "plan" : "events",
    filter_kind: filter.filter_kind,
    ...(filter.filter_density === undefined ? {} : { filter_density: filter.filter_density }),
    ...(filter.filter_id === undefined ? {} : { filter_id: filter.filter_id }),
    balance_depths_descending_m: balancesDown(legs),
    balance_depths_ascending_m: balancesUp(legs),
    balance_tolerance_delta_e00: tolerance,
    moments: moments.map((moment, i) => tellMoment(moment, estimates.moments[i] ?? never(), dive)),
    ...(plan.cardFrames === undefined ? {} : { marks: marksOf(scene, plan.cardFrames) }),
    clips: seenClips.map((clip, i) => tellClip(clip, estimates.clips[i] ?? never(), dive)),
    reasons,
    cautions: cautionsFor(scene, {
      uncertainty,
      advises: ["balance", "way_up", ...(filter.filter_kind === "none" ? [] : [filterAdvice(scene)])],
    }),
    uncertainty,
    sources: [
      ...new Set([...lightSources(light.grids.bare.hours.start), ...balanceSources(scene), ...SOURCES]),
    ],
  };
}

function never(): never {
  throw new RangeError("every moment has its figures");
}
