import type { Advice } from "../cautions/advises.js";
import { cautionsFor } from "../cautions/cautions-for.js";
import { sunReasons } from "../reasons/sun-reasons.js";
import type { MixedLightAnswer, MixedLightAtDepth } from "../result/mixed-light.js";
import type { Scene } from "../scene/scene.js";
import { mixOf } from "./mix.js";
import { mixedReasons } from "./reasons.js";

/**
 * Lamps against daylight on an upright subject, depth by depth: per channel, the colour split that one balance leaves, a verdict
 * and the ways out.
 * @throws SceneProblem without any light, or for a sun below the model's domain.
 */
export function mixedLight(scene: Scene): MixedLightAnswer {
  const { conditions, zones, depths, uncertainty, sources } = mixOf(scene);
  const reasons = [...mixedReasons(depths, zones), ...sunReasons(conditions)];
  const ways = depths.flatMap(({ ways_out }) => ways_out);
  const advises: Advice[] = scene.lamps.length > 0 ? ["balance"] : [];
  return {
    balance_to: balanceTo(depths),
    zones,
    depths,
    reasons,
    cautions: cautionsFor(scene, { reasons, uncertainty, ways, advises }),
    uncertainty,
    sources,
  };
}

/** To the lamps where they are alone or lead at most depths, else to daylight. */
function balanceTo(answers: readonly MixedLightAtDepth[]): "daylight" | "lamps" {
  const toLamps = answers.filter(({ verdict }) => verdict === "lamps_only" || verdict === "lamps_lead");
  return toLamps.length * 2 > answers.length ? "lamps" : "daylight";
}
