import { cameraState } from "../camera/camera-state.js";
import type { Conditions } from "../light/conditions.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import { itemAt, mapEach, type NonEmpty } from "../lists/non-empty.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { type Candidate, candidateFilter } from "./candidates.js";
import { type Merit, meritOf } from "./merit.js";

/** One candidate's merits, depth by depth, shallow first. */
export interface Judged {
  candidate: Candidate;
  merits: Readonly<NonEmpty<Merit>>;
}

/** One judgement for each candidate, in their order. */
export function judge<const Candidates extends readonly Candidate[]>(
  conditions: Conditions,
  nuisance: Nuisance,
  depths: Readonly<NonEmpty<number>>,
  candidates: Candidates,
): { [Place in keyof Candidates]: Judged } {
  const world = underwater(conditions, nuisance);
  const camera = cameraState(conditions.scene, nuisance);
  const stages = mapEach(depths, (depth_m) => stageAt(world, depth_m));
  const judged = candidates.map((candidate): Judged => {
    const filter = candidateFilter(candidate, nuisance);
    return { candidate, merits: mapEach(stages, (stage) => meritOf(stage, filter, camera)) };
  });
  return judged as { [Place in keyof Candidates]: Judged };
}

/**
 * Mean colour error of a candidate over the range. Where the mount lets the diver change at depth, each depth counts with or
 * without it, whichever leaves less.
 */
export function rangeError({ merits }: Judged, without: Judged, changeable: boolean): number {
  const errors = merits.map(({ delta_e00 }, d) =>
    changeable ? Math.min(delta_e00, itemAt(without.merits, d).delta_e00) : delta_e00,
  );
  return errors.reduce((sum, e) => sum + e, 0) / errors.length;
}
