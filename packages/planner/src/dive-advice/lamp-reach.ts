/** How far lamps carry that make the light of a picture. */
import { add, illuminance_lx, multiply, pathTransmittance } from "@sunfathom/optics";
import type { LampStepCodes } from "../codes/steps.js";
import { bisect } from "../light/bisect.js";
import { conditionsOf } from "../light/conditions.js";
import { cardDaylightAt } from "../light/daylight-at-depth.js";
import { lampLightAt, underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";

/** What is so much darker than a subject that is exposed right is black in the picture: 18 % grey then looks like 0.6 %. A judgement. */
const BLACK_STOPS = 5;
/** Nobody sees farther by lamps. */
const FARTHEST_M = 30;
const STEP_M = 0.05;

/**
 * From where on, as seen from the camera, the picture is black, or in daylight alone where that is bright enough to show: what the
 * lamps light there is then no brighter than daylight is.
 * @param depth_m where daylight is compared
 */
export function lampReach(filmed: Scene, depth_m: number): LampStepCodes["lamps_reach"] {
  const world = underwater(conditionsOf(filmed), NOMINAL);
  const nearest_m = Math.min(...filmed.lamps.map((lamp) => lamp.distance_m));
  const lampsAt = (behind_m: number) => lampLightAt(world, { distance_m: nearest_m + behind_m });
  const seen = (behind_m: number) =>
    illuminance_lx(
      multiply(lampsAt(behind_m), pathTransmittance(world.path_per_m, filmed.subject_distance_m + behind_m)),
    );
  const daylight = cardDaylightAt(world, depth_m);
  const day_lx = illuminance_lx(daylight);
  const stops = Math.log2(illuminance_lx(add(lampsAt(0), daylight)) / day_lx);
  const isBlack = !(stops < BLACK_STOPS);
  const isLit = isBlack
    ? (behind_m: number) => Math.log2(seen(0) / seen(behind_m)) < BLACK_STOPS
    : (behind_m: number) => illuminance_lx(lampsAt(behind_m)) > day_lx;
  const dark_m = filmed.subject_distance_m + bisect(isLit, 0, FARTHEST_M, STEP_M);
  return isBlack ? { dark_m } : { dark_m, daylight: { stops } };
}
