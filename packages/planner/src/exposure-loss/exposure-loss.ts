import { cautionsFor } from "../cautions/cautions-for.js";
import { conditionsOf } from "../light/conditions.js";
import { depthsOf } from "../light/depths.js";
import { hasLensFilter, lensFilterOf } from "../light/lens-filter.js";
import { requireLight } from "../light/require-light.js";
import { lightSources } from "../light/sources.js";
import { underwater } from "../light/underwater.js";
import { lastOf, mapBoth, mapEach } from "../lists/non-empty.js";
import { sunReasons } from "../reasons/sun-reasons.js";
import type { ExposureLossAnswer } from "../result/exposure-loss.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, FILTER_CAUSES } from "../uncertainty/causes.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { propagate, shareOfCauses } from "../uncertainty/propagate.js";
import { exposureAtDepth } from "./at-depth.js";
import { budgetAt } from "./budget.js";
import { cloudReasons } from "./cloud.js";
import { exposureReasons } from "./reasons.js";

/**
 * Where the light goes between the surface and the sensor, in stops of luminance, and which settings pay for it: exposure by
 * ISO 2720 as an incident meter at the subject would ask for, less what water, port and filter take on the way to the sensor.
 * @throws SceneProblem without any light, or for a sun below the model's domain.
 */
export function exposureLoss(scene: Scene): ExposureLossAnswer {
  const conditions = conditionsOf(scene);
  requireLight(conditions);
  const depths = depthsOf(scene);
  const nominalFilter = hasLensFilter(scene) && !scene.filter_transmittance;
  const causes = [
    ...causesOf(conditions).filter(({ code }) => code !== "sensor"),
    ...(nominalFilter ? FILTER_CAUSES.filter(({ code }) => code !== "full_well") : []),
  ];
  const propagated = propagate((nuisance: Nuisance) => {
    const world = underwater(conditions, nuisance);
    const filter = lensFilterOf(scene, nuisance);
    return { depths: mapEach(depths, (depth_m) => budgetAt(world, filter, depth_m)) };
  }, causes);
  const answers = mapBoth(depths, propagated.estimates.depths, (depth_m, budget) =>
    exposureAtDepth(conditions, depth_m, budget),
  );
  const deepest = lastOf(answers);
  const reasons = [
    ...exposureReasons(scene, answers),
    ...cloudReasons(conditions, deepest.depth_m, deepest.exposure_value_ev100.likely),
    ...sunReasons(conditions),
  ];
  const uncertainty = shareOfCauses(propagated, (figures) => lastOf(figures.depths).ev100);
  const ways = answers.flatMap(({ ways_to_pay }) => ways_to_pay);
  return {
    depths: answers,
    reasons,
    cautions: cautionsFor(scene, { reasons, uncertainty, ways }),
    uncertainty,
    sources: [...lightSources(conditions), "iso_2720", "port_radiance"],
  };
}
