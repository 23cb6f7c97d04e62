import type { Advice } from "../cautions/advises.js";
import { cautionsFor } from "../cautions/cautions-for.js";
import { mapBoth, mapEach } from "../lists/non-empty.js";
import { sunReasons } from "../reasons/sun-reasons.js";
import type { MixedLightAnswer, MixedLightAtDepth } from "../result/mixed-light.js";
import type { Scene } from "../scene/scene.js";
import { leadReasons } from "./lead-reasons.js";
import { mixOf } from "./mix.js";
import { mixedReasons } from "./reasons.js";
import { toLeadAt } from "./to-lead.js";

/**
 * Lamps against daylight on an upright subject, depth by depth: per channel, the colour split that one balance leaves, a verdict
 * and the ways out.
 * @throws SceneProblem without any light, or for a sun below the model's domain.
 */
export function mixedLight(scene: Scene): MixedLightAnswer {
  const { conditions, zones, depths: mixed, uncertainty, sources } = mixOf(scene);
  const toLead = toLeadAt(
    conditions,
    mapEach(mixed, ({ depth_m }) => depth_m),
  );
  const depths = toLead ? mapBoth(mixed, toLead, (depth, needs) => ({ ...depth, ...needs })) : mixed;
  const reasons = [...mixedReasons(depths, zones), ...leadReasons(scene, depths), ...sunReasons(conditions)];
  const ways = depths.flatMap(({ ways_out }) => ways_out);
  const advises: Advice[] = scene.lamps.length > 0 ? ["balance"] : toLead ? ["light"] : [];
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
