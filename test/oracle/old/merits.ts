// As it was before the search was made fast: see README.md.
import { type CameraState, cameraState } from "../../../packages/planner/src/camera/camera-state.js";
import { type Candidate, candidateFilter } from "../../../packages/planner/src/filter-choice/candidates.js";
import type { Conditions } from "../../../packages/planner/src/light/conditions.js";
import { isOutOfSight } from "../../../packages/planner/src/light/sight.js";
import { type Stage, stageAt } from "../../../packages/planner/src/light/stage.js";
import { underwater } from "../../../packages/planner/src/light/underwater.js";
import { itemAt, mapBoth, mapEach, type NonEmpty } from "../../../packages/planner/src/lists/non-empty.js";
import type { Finish, Scene } from "../../../packages/planner/src/scene/scene.js";
import type { Nuisance } from "../../../packages/planner/src/uncertainty/nuisance.js";
import { type Merit, meritOf } from "./merit.js";

/** One candidate's merits, depth by depth, shallow first. */
export interface Judged {
  candidate: Candidate;
  merits: Readonly<NonEmpty<Merit>>;
}

/** How the pictures of a scene are finished. */
export const finishOf = ({ finish }: Scene): Finish => finish ?? "in_camera";

/** One state of the world as a camera meets it, depth by depth. */
export interface Sight {
  nuisance: Nuisance;
  camera: CameraState;
  finish: Finish;
  stages: Readonly<NonEmpty<Stage>>;
}

export function sightOf(
  conditions: Conditions,
  nuisance: Nuisance,
  depths: Readonly<NonEmpty<number>>,
  finish = finishOf(conditions.scene),
): Sight {
  const world = underwater(conditions, nuisance);
  return {
    nuisance,
    camera: cameraState(conditions.scene, nuisance, finish),
    finish,
    stages: mapEach(depths, (depth_m) => stageAt(world, depth_m)),
  };
}

/** One judgement for each candidate, in their order, as it is in that state. */
export function judgeIn<const Candidates extends readonly Candidate[]>(
  { nuisance, camera, finish, stages }: Sight,
  candidates: Candidates,
): { [Place in keyof Candidates]: Judged } {
  const judged = candidates.map((candidate): Judged => {
    const filter = candidateFilter(candidate, nuisance);
    return { candidate, merits: mapEach(stages, (stage) => meritOf(stage, filter, camera, finish)) };
  });
  return judged as { [Place in keyof Candidates]: Judged };
}

/** One judgement for each candidate, in their order. */
export const judge = <const Candidates extends readonly Candidate[]>(
  conditions: Conditions,
  nuisance: Nuisance,
  depths: Readonly<NonEmpty<number>>,
  candidates: Candidates,
): { [Place in keyof Candidates]: Judged } => judgeIn(sightOf(conditions, nuisance, depths), candidates);

/** The candidate that leaves the least error at a depth; the first of equals. */
export const leastErrorAt = (judged: Readonly<NonEmpty<Judged>>, d: number): Judged =>
  judged.reduce((a, b) => (itemAt(b.merits, d).delta_e00 < itemAt(a.merits, d).delta_e00 ? b : a));

/** What all candidates are compared with and by. */
export interface Comparison {
  /** The camera without a filter. */
  without: Judged;
  redIsGone: readonly boolean[];
  /** Whether a filter can be credited with any gain in this light and at this distance. */
  mayGain: boolean;
  /** Whether the mount lets the diver change at depth. */
  changeable: boolean;
}

/**
 * Lamps alone, told by their colour temperature, have a spectrum that is only taken: what a filter gains under white LEDs that CIE 15
 * tells apart differs by as much as it gains at all. A lamp that names its LED has a known one.
 */
const isLightKnown = ({ daylight, scene }: Conditions): boolean =>
  daylight !== undefined || scene.lamps.every(({ led }) => led !== undefined);

/**
 * A filter is credited with what it gains where the light is known and the subject can be seen: beyond what one can see, it changes the
 * colour of the haze and nothing else.
 */
export const mayFilterGain = (conditions: Conditions): boolean =>
  isLightKnown(conditions) && !isOutOfSight(conditions);

/**
 * Colour errors of a candidate, depth by depth. Where nothing of red is red a filter is credited with no gain: what it betters
 * there is the fit to green and blue. Nor is it where the light is not known or the subject is out of sight.
 */
export function creditedErrors(
  { candidate, merits }: Judged,
  { without, redIsGone, mayGain }: Pick<Comparison, "without" | "redIsGone" | "mayGain">,
): Readonly<NonEmpty<number>> {
  return mapEach(merits, ({ delta_e00 }, d) =>
    candidate.kind === "none" || (mayGain && !redIsGone[d])
      ? delta_e00
      : Math.max(delta_e00, itemAt(without.merits, d).delta_e00),
  );
}

/**
 * Mean colour error of a candidate over the range. Where the mount lets the diver change at depth, each depth counts with or
 * without it, whichever leaves less.
 */
export function rangeError(judged: Judged, comparison: Comparison): number {
  const { without, changeable } = comparison;
  const errors = mapBoth(creditedErrors(judged, comparison), without.merits, (error, { delta_e00 }) =>
    changeable ? Math.min(error, delta_e00) : error,
  );
  return errors.reduce((sum, e) => sum + e, 0) / errors.length;
}
