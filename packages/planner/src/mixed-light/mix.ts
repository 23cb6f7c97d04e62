import { type Conditions, conditionsOf } from "../light/conditions.js";
import { depthsOf } from "../light/depths.js";
import { requireLight } from "../light/require-light.js";
import { lightSources } from "../light/sources.js";
import { underwater } from "../light/underwater.js";
import { lastOf, mapBoth, mapEach, type NonEmpty } from "../lists/non-empty.js";
import type { UncertaintyCause } from "../result/common.js";
import type { MixedLightAtDepth, MixedLightZone } from "../result/mixed-light.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, LIT_HAZE_CAUSES } from "../uncertainty/causes.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { propagate, shareOfCauses } from "../uncertainty/propagate.js";
import { mixedAtDepth } from "./at-depth.js";
import { type Numbers, numbersAt } from "./numbers.js";
import { zonesOf } from "./zones.js";

/** How lamps and daylight mix over a range, before it is told why. */
export interface Mix {
  conditions: Conditions;
  zones: MixedLightZone[];
  depths: NonEmpty<MixedLightAtDepth>;
  uncertainty: UncertaintyCause[];
  sources: string[];
}

/** @throws SceneProblem without any light, or for a sun below the model's domain. */
export function mixOf(scene: Scene): Mix {
  const conditions = conditionsOf(scene);
  requireLight(conditions);
  const depths = depthsOf(scene);
  const mixed = scene.lamps.length > 0 && conditions.daylight !== undefined;
  const propagated = propagate(
    (nuisance) => {
      const world = underwater(conditions, nuisance);
      return { depths: mapEach(depths, (depth_m) => numbersAt(world, depth_m, mixed)) };
    },
    [...causesOf(conditions), ...(scene.lamps.length > 0 ? LIT_HAZE_CAUSES : [])],
  );
  const world = underwater(conditions, NOMINAL);
  const answers = mapBoth(depths, propagated.estimates.depths, (depth_m, estimates) =>
    mixedAtDepth(world, depth_m, estimates),
  );
  const main: keyof Numbers = mixed ? "green" : scene.lamps.length > 0 ? "log2LampLux" : "log2DaylightLux";
  return {
    conditions,
    zones: zonesOf(world),
    depths: answers,
    uncertainty: shareOfCauses(propagated, (figures) => lastOf(figures.depths)[main]),
    sources: [...lightSources(conditions), "ciede2000", ...(scene.lamps.length > 0 ? ["lit_haze"] : [])],
  };
}
