import { type Conditions, conditionsOf } from "../light/conditions.js";
import { lensFilterOf } from "../light/lens-filter.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { redDownTo_m } from "./red-down-to.js";
import { ACCEPTABLE, GONE } from "./red-light.js";

export interface RedDepthsNominal {
  acceptable_m: number;
  gone_m: number;
}

/** Where red ends for a scene as it is filmed, without its spread; undefined without daylight. */
export function colourRedDepths(scene: Scene): RedDepthsNominal | undefined {
  const conditions: Conditions = conditionsOf(scene);
  if (!conditions.daylight) return undefined;
  const filter = lensFilterOf(scene, NOMINAL);
  return {
    acceptable_m: redDownTo_m(conditions, NOMINAL, filter, ACCEPTABLE),
    gone_m: redDownTo_m(conditions, NOMINAL, filter, GONE),
  };
}
