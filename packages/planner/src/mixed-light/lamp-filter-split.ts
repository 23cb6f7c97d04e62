import { add, type Spectrum } from "@sunfathom/optics";
import { castBetween } from "../camera/cast.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { lampLightAt, underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { lightsAt } from "./lights.js";

/** Colour split at a depth, balanced to daylight, with one filter on every lamp, in CIEDE2000. */
export const splitWithLampFilter = (scene: Scene, depth_m: number, filter: Spectrum): number =>
  splitIn(conditionsOf(scene), depth_m, filter);

/** The same where the conditions are known. */
export function splitIn(conditions: Conditions, depth_m: number, filter: Spectrum): number {
  const world = underwater(conditions, NOMINAL);
  const { daylight, profile } = lightsAt(world, depth_m);
  return castBetween(profile, daylight, add(daylight, lampLightAt(world, { filter })));
}
