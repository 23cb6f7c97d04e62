import { cautionsFor } from "../cautions/cautions-for.js";
import { conditionsOf } from "../light/conditions.js";
import { depthsOf } from "../light/depths.js";
import { requireLight } from "../light/require-light.js";
import { lightSources } from "../light/sources.js";
import { underwater } from "../light/underwater.js";
import { lastOf, mapBoth, mapEach } from "../lists/non-empty.js";
import { sunReasons } from "../reasons/sun-reasons.js";
import type { MixedLightAnswer, MixedLightAtDepth } from "../result/mixed-light.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, LIT_HAZE_CAUSES } from "../uncertainty/causes.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { propagate, shareOfCauses } from "../uncertainty/propagate.js";
import { mixedAtDepth } from "./at-depth.js";
import { type Numbers, numbersAt } from "./numbers.js";
import { mixedReasons } from "./reasons.js";
import { zonesOf } from "./zones.js";

/**
 * Lamps against daylight on an upright subject, depth by depth: per channel, the colour split that one balance leaves, a verdict
 * and the ways out.
 * @throws SceneProblem without any light, or for a sun below the model's domain.
 */
export function mixedLight(scene: Scene): MixedLightAnswer {
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
  const zones = zonesOf(world);
  const reasons = [...mixedReasons(answers, zones), ...sunReasons(conditions)];
  const uncertainty = shareOfCauses(propagated, (figures) => lastOf(figures.depths)[main]);
  const ways = answers.flatMap(({ ways_out }) => ways_out);
  return {
    balance_to: balanceTo(answers),
    zones,
    depths: answers,
    reasons,
    cautions: cautionsFor(scene, {
      reasons,
      uncertainty,
      ways,
      advises: scene.lamps.length > 0 ? ["balance"] : [],
    }),
    uncertainty,
    sources: [...lightSources(conditions), "ciede2000", ...(scene.lamps.length > 0 ? ["lit_haze"] : [])],
  };
}

/** To the lamps where they are alone or lead at most depths, else to daylight. */
function balanceTo(answers: readonly MixedLightAtDepth[]): "daylight" | "lamps" {
  const toLamps = answers.filter(({ verdict }) => verdict === "lamps_only" || verdict === "lamps_lead");
  return toLamps.length * 2 > answers.length ? "lamps" : "daylight";
}
