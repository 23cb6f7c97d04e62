import { cameraState } from "../camera/camera-state.js";
import type { Conditions } from "../light/conditions.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { type Candidate, candidateFilter } from "./candidates.js";
import { type Merit, meritOf } from "./merit.js";

/** One candidate's merits, depth by depth, shallow first. */
export interface Judged {
  candidate: Candidate;
  merits: readonly Merit[];
}

export function judge(
  conditions: Conditions,
  nuisance: Nuisance,
  depths: readonly number[],
  candidates: readonly Candidate[],
): Judged[] {
  const world = underwater(conditions, nuisance);
  const camera = cameraState(conditions.scene, nuisance);
  const stages = depths.map((depth_m) => stageAt(world, depth_m));
  return candidates.map((candidate) => {
    const filter = candidateFilter(candidate, nuisance);
    return { candidate, merits: stages.map((stage) => meritOf(stage, filter, camera)) };
  });
}

/**
 * Mean colour error of a candidate over the range. Where the mount lets the diver change at depth, each depth counts with or
 * without it, whichever leaves less.
 */
export function rangeError({ merits }: Judged, without: Judged, changeable: boolean): number {
  const errors = merits.map(({ delta_e00 }, d) =>
    changeable ? Math.min(delta_e00, without.merits[d].delta_e00) : delta_e00,
  );
  return errors.reduce((sum, e) => sum + e, 0) / errors.length;
}
