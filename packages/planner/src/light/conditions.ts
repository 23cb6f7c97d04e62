import type { Floor } from "@sunfathom/optics";
import type { Scene } from "../scene/scene.js";
import { type Daylight, daylightUnder } from "./daylight.js";
import { seaFloorOf } from "./sea-floor.js";
import { type Sun, sunOf } from "./sun.js";
import { type DescribedWater, describeWater } from "./water.js";
import { requireWithinSight } from "./within-sight.js";

/** A scene with its sun, daylight and water worked out once: what every evaluation of the model starts from. */
export interface Conditions {
  scene: Scene;
  /** Undefined without daylight. */
  sun: Sun | undefined;
  daylight: Daylight | undefined;
  water: DescribedWater;
  /** Undefined over deep water. */
  floor: Floor | undefined;
}

/** @throws SceneProblem for a sun, place, time, water, distance or filter that the model cannot answer for. */
export function conditionsOf(scene: Scene): Conditions {
  const sun = sunOf(scene);
  const daylight = sun && daylightUnder(sun, scene);
  const water = describeWater(scene, daylight);
  requireWithinSight(scene, daylight, water);
  return { scene, sun, daylight, water, floor: seaFloorOf(scene) };
}
