import { add, type Spectrum } from "@sunfathom/optics";
import { castBetween } from "../camera/cast.js";
import { conditionsOf } from "../light/conditions.js";
import { lampLightAt, underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { lightsAt } from "./lights.js";

/** Colour split at a depth, balanced to daylight, with one filter on every lamp, in CIEDE2000. */
export function splitWithLampFilter(scene: Scene, depth_m: number, filter: Spectrum): number {
  const world = underwater(conditionsOf(scene), NOMINAL);
  const { daylight, profile } = lightsAt(world, depth_m);
  return castBetween(profile, daylight, add(daylight, lampLightAt(world, { filter })));
}
