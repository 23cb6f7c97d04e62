import {
  add,
  INCIDENT_C,
  multiply,
  pathTransmittance,
  REFLECTED_K,
  type Spectrum,
  scale,
  veilingLight,
} from "@sunfathom/optics";
import { levelDaylightAt } from "./daylight-at-depth.js";
import { viewAt } from "./haze.js";
import { scaledFloor } from "./sea-floor.js";
import type { Underwater } from "./underwater.js";

/** The grey that both meters of ISO 2720 agree on: what a subject is taken to reflect. */
export const METER_GREY = (Math.PI * REFLECTED_K) / INCIDENT_C;
/** Of the picture, over a floor and over deep water: a judgement, no published source. */
const SHARES = { subject: 1 / 3, floor: 1 / 3 } as const;
/** The floor is seen 30 degrees below the horizon: over a path of twice the height above it. */
const FLOOR_PATHS = 2;

/**
 * Mean light of the picture by day, as the light on a white card that looks as bright, W m^-2 nm^-1: a third subject, a third sea
 * floor and the rest open water, each through the water before it and its haze. Before port and filter.
 * @param subject light on a white subject as it looks
 */
export function pictureMean(world: Underwater, subject: Spectrum, depth_m: number): Spectrum {
  const { openWater: water, path, haze } = viewAt(world, depth_m);
  const grey = add(scale(multiply(subject, path), METER_GREY), haze);
  const { floor, nuisance } = world;
  const parts = [scale(grey, SHARES.subject)];
  if (floor) {
    const { reflectance } = scaledFloor(floor, nuisance.floorScale);
    const way = pathTransmittance(world.path_per_m, FLOOR_PATHS * (floor.depth_m - depth_m));
    const lit = multiply(levelDaylightAt(world, depth_m), reflectance);
    parts.push(scale(add(multiply(lit, way), veilingLight(water, way)), SHARES.floor));
  }
  const left = 1 - SHARES.subject - (floor ? SHARES.floor : 0);
  parts.push(scale(water, left));
  return parts.reduce((sum, part) => add(sum, part));
}
