import type { Spectrum } from "@sunfathom/optics";
import { castBetween } from "../camera/cast.js";
import { sensorOf } from "../camera/sensor.js";
import { sensorProfile } from "../camera/sensor-profile.js";
import { conditionsOf } from "../light/conditions.js";
import { lensFilterOf } from "../light/lens-filter.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { cardLight } from "../white-balance/avoidable-cast.js";

/** How far from the camera a diver holds a card without help. Common practice, no published source. */
const ARM_M = 0.7;

/** Cast that the water beyond a card at arm's length leaves on a subject that nobody goes after. */
export function fromArmsLength(scene: Scene, depth_m: number): { distance_m: number; cast: number } {
  const { subject_distance_m: distance_m } = scene;
  const [near, far] = [Math.min(ARM_M, distance_m), distance_m].map((subject_distance_m) => {
    const world = underwater(conditionsOf({ ...scene, subject_distance_m }), NOMINAL);
    return cardLight(world, lensFilterOf(scene, NOMINAL), depth_m);
  }) as [Spectrum, Spectrum];
  return { distance_m, cast: castBetween(sensorProfile(sensorOf(scene, NOMINAL)), near, far) };
}
