import { cameraState } from "../camera/camera-state.js";
import type { Conditions } from "../light/conditions.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import { itemAt, mapBoth, mapEach, type NonEmpty } from "../lists/non-empty.js";
import type { Finish, Scene } from "../scene/scene.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { type Candidate, candidateFilter } from "./candidates.js";
import { type Merit, meritOf } from "./merit.js";

/** One candidate's merits, depth by depth, shallow first. */
export interface Judged {
  candidate: Candidate;
  merits: Readonly<NonEmpty<Merit>>;
}

/** How the pictures of a scene are finished. */
export const finishOf = ({ finish }: Scene): Finish => finish ?? "matched";

/** One judgement for each candidate, in their order. */
export function judge<const Candidates extends readonly Candidate[]>(
  conditions: Conditions,
  nuisance: Nuisance,
  depths: Readonly<NonEmpty<number>>,
  candidates: Candidates,
): { [Place in keyof Candidates]: Judged } {
  const finish = finishOf(conditions.scene);
  const world = underwater(conditions, nuisance);
  const camera = cameraState(conditions.scene, nuisance, finish);
  const stages = mapEach(depths, (depth_m) => stageAt(world, depth_m));
  const judged = candidates.map((candidate): Judged => {
    const filter = candidateFilter(candidate, nuisance);
    return { candidate, merits: mapEach(stages, (stage) => meritOf(stage, filter, camera, finish)) };
  });
  return judged as { [Place in keyof Candidates]: Judged };
}

/** Where less than this of the red channel's signal is red light, nothing of red is red. */
const LEAST_RED_SHARE = 0.01;

/** The candidate that leaves the least error at a depth; the first of equals. */
export const leastErrorAt = (judged: Readonly<NonEmpty<Judged>>, d: number): Judged =>
  judged.reduce((a, b) => (itemAt(b.merits, d).delta_e00 < itemAt(a.merits, d).delta_e00 ? b : a));

/**
 * Depth by depth, whether nothing of red is red behind the filter that leaves the least error there. Asked of that one alone: a filter
 * must not win by being just dense enough to pass.
 * @param judged every candidate; the first is no filter
 */
export function whereRedIsGone([without, ...filters]: Readonly<NonEmpty<Judged>>): readonly boolean[] {
  const [first, ...others] = filters;
  return without.merits.map(
    (_, d) =>
      first !== undefined &&
      itemAt(leastErrorAt([first, ...others], d).merits, d).red_above_600_nm_share < LEAST_RED_SHARE,
  );
}

/** A picture that is looked at as it is and a stop too dark is no better for its colours. */
const TOO_DARK_STOPS = -1;

/** What all candidates are compared with and by. */
export interface Comparison {
  /** The camera without a filter. */
  without: Judged;
  redIsGone: readonly boolean[];
  /** A grade that follows exposes anew, and light that is carried can be any colour: what else a filter is not credited for. */
  credit: Credit;
  /** Whether the mount lets the diver change at depth. */
  changeable: boolean;
}

export interface Credit {
  /** Whether a filter may leave the picture darker than it should be. */
  inTheDark: boolean;
  /** Whether it may better the colour of lamps alone. What it betters there hangs on what their light is taken to be. */
  inLampLight: boolean;
}

export const creditUnder = (finish: Finish, { daylight }: Conditions): Credit => ({
  inTheDark: finish === "matched",
  inLampLight: finish === "matched" || daylight !== undefined,
});

/**
 * Colour errors of a candidate, depth by depth. Where nothing of red is red a filter is credited with no gain: what it betters
 * there is the fit of a grade to green and blue. Nor is it where it takes light that nothing can pay for.
 */
export function creditedErrors(
  { candidate, merits }: Judged,
  { without, redIsGone, credit }: Pick<Comparison, "without" | "redIsGone" | "credit">,
): Readonly<NonEmpty<number>> {
  const isCredited = ({ settings }: Merit, d: number): boolean =>
    !redIsGone[d] && credit.inLampLight && (credit.inTheDark || settings.off_by_stops >= TOO_DARK_STOPS);
  return mapEach(merits, (merit, d) =>
    candidate.kind === "none" || isCredited(merit, d)
      ? merit.delta_e00
      : Math.max(merit.delta_e00, itemAt(without.merits, d).delta_e00),
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
