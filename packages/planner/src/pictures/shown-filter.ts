import { type Candidate, candidatesFor } from "../filter-choice/candidates.js";
import { chooseAmong } from "../filter-choice/choose.js";
import type { Conditions } from "../light/conditions.js";
import type { Scene } from "../scene/scene.js";

export interface ShownFilter {
  conditions: Conditions;
  candidate: Candidate;
  is_advised: boolean;
  /** Densities that nobody can tell from the advised one; absent for no filter and for measured ones. */
  as_good?: { from: number; to: number };
  /** Middle of the filmed depths. */
  depth_m: number;
}

/**
 * The filter that pictures show: the one that `filter-choice` advises, or the best of those that it does not.
 * @throws SceneProblem as `filterChoice` does
 */
export function shownFilter(scene: Scene): ShownFilter {
  const { conditions, search } = chooseAmong(scene, candidatesFor(scene));
  const { advised, asGood, bestFilter, runnerUp } = search.decision;
  const is_advised = advised.candidate.kind !== "none";
  const { candidate } = is_advised ? advised : (bestFilter ?? runnerUp);
  return {
    conditions,
    candidate,
    is_advised,
    ...(is_advised && asGood ? { as_good: asGood } : {}),
    depth_m: (scene.min_depth_m + scene.max_depth_m) / 2,
  };
}
