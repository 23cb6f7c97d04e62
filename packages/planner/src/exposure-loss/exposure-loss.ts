import { cautionsFor } from "../cautions/cautions-for.js";
import { lastOf } from "../lists/non-empty.js";
import { sunReasons } from "../reasons/sun-reasons.js";
import type { ExposureLossAnswer } from "../result/exposure-loss.js";
import type { Scene } from "../scene/scene.js";
import { cloudReasons } from "./cloud.js";
import { exposuresOf } from "./exposures.js";
import { exposureReasons } from "./reasons.js";

/**
 * Where the light goes between the surface and the sensor, in stops of luminance, and which settings pay for it: exposure by
 * ISO 2720 as an incident meter at the subject would ask for, less what water, port and filter take on the way to the sensor.
 * @throws SceneProblem without any light, or for a sun below the model's domain.
 */
export function exposureLoss(scene: Scene): ExposureLossAnswer {
  const { conditions, depths, uncertainty, sources } = exposuresOf(scene);
  const deepest = lastOf(depths);
  const reasons = [
    ...exposureReasons(scene, depths),
    ...cloudReasons(conditions, deepest.depth_m, deepest.exposure_value_ev100.likely),
    ...sunReasons(conditions),
  ];
  const ways = depths.flatMap(({ ways_to_pay }) => ways_to_pay);
  return {
    depths,
    reasons,
    cautions: cautionsFor(scene, { reasons, uncertainty, ways }),
    uncertainty,
    sources,
  };
}
