import { NO_FILTER } from "../filter-choice/candidates.js";
import { conditionsOf } from "../light/conditions.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { frameErrorsAt } from "./frame-error.js";

/** What is left where lamps are on after all, for a picture in which the subject alone counts. */
export interface OnSubject {
  error: number;
  around: number;
}

/** More than this mean colour error on the subject itself is nothing to film for: a judgement. */
const WORTH_BELOW_DELTA_E00 = 12;

/** Lamps on, nothing on the lens, and the balance set in their light: where that leaves a subject that can be looked at. */
export function onSubjectWith(lamped: Scene, depth_m: number): OnSubject | undefined {
  const { filter_kind: _, filter_density: __, filter_transmittance: ___, ...bare } = lamped;
  const { lit: error, around = error } = frameErrorsAt(conditionsOf(bare), NOMINAL, depth_m, NO_FILTER);
  return error < WORTH_BELOW_DELTA_E00 ? { error, around } : undefined;
}
