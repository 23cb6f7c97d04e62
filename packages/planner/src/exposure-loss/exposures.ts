import { type Conditions, conditionsOf } from "../light/conditions.js";
import { depthsOf } from "../light/depths.js";
import { hasLensFilter, lensFilterOf } from "../light/lens-filter.js";
import { requireLight } from "../light/require-light.js";
import { lightSources } from "../light/sources.js";
import { underwater } from "../light/underwater.js";
import { lastOf, mapBoth, mapEach, type NonEmpty } from "../lists/non-empty.js";
import type { UncertaintyCause } from "../result/common.js";
import type { ExposureAtDepth } from "../result/exposure-loss.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, filterCausesOf } from "../uncertainty/causes.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { propagate, shareOfCauses } from "../uncertainty/propagate.js";
import { exposureAtDepth } from "./at-depth.js";
import { budgetAt } from "./budget.js";

/** Exposure over a range, before it is told why. */
export interface Exposures {
  conditions: Conditions;
  depths: NonEmpty<ExposureAtDepth>;
  uncertainty: UncertaintyCause[];
  sources: string[];
}

/** @throws SceneProblem without any light, or for a sun below the model's domain. */
export function exposuresOf(scene: Scene): Exposures {
  const conditions = conditionsOf(scene);
  requireLight(conditions);
  const depths = depthsOf(scene);
  const nominalFilter = hasLensFilter(scene) && !scene.filter_transmittance;
  const causes = [
    ...causesOf(conditions).filter(({ code }) => code !== "sensor"),
    ...(nominalFilter ? filterCausesOf(scene).filter(({ code }) => code !== "full_well") : []),
  ];
  const propagated = propagate((nuisance: Nuisance) => {
    const world = underwater(conditions, nuisance);
    const filter = lensFilterOf(scene, nuisance);
    return { depths: mapEach(depths, (depth_m) => budgetAt(world, filter, depth_m)) };
  }, causes);
  return {
    conditions,
    depths: mapBoth(depths, propagated.estimates.depths, (depth_m, budget) =>
      exposureAtDepth(conditions, depth_m, budget),
    ),
    uncertainty: shareOfCauses(propagated, (figures) => lastOf(figures.depths).ev100),
    sources: [...lightSources(conditions), "iso_2720", "port_radiance"],
  };
}
