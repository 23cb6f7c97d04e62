import {
  add,
  DOME_C,
  INCIDENT_C,
  multiply,
  pathTransmittance,
  REFLECTED_K,
  type Spectrum,
  scale,
  veilingLight,
} from "@sunfathom/optics";
import { DOME_AS_FLAT, levelDaylightAt, openWaterAt } from "../light/daylight-at-depth.js";
import { scaledFloor } from "../light/sea-floor.js";
import { towardsCamera, type Underwater } from "../light/underwater.js";

/** The grey that both meters of ISO 2720 agree on: what a subject is taken to reflect. */
const METER_GREY = (Math.PI * REFLECTED_K) / INCIDENT_C;
/** Of the picture, over a floor and over deep water: a judgement, no published source. */
const SHARES = { subject: 1 / 3, floor: 1 / 3 } as const;
/** The floor is seen 30 degrees below the horizon: over a path of twice the height above it. */
const FLOOR_PATHS = 2;

/**
 * What a meter in the housing averages over the picture, as the light on a solid subject that asks for the same exposure: a third
 * subject, a third sea floor and the rest open water, each through the water before it and its haze. Before port and filter.
 * @param subject light on the subject, as a dome receptor meters it
 */
export function sceneLight(world: Underwater, subject: Spectrum, depth_m: number): Spectrum {
  const water = openWaterAt(world, depth_m);
  const path = towardsCamera(world);
  const haze = veilingLight(water, path);
  const grey = add(scale(multiply(subject, path), METER_GREY * DOME_AS_FLAT), haze);
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
  return scale(
    parts.reduce((sum, part) => add(sum, part)),
    DOME_C / INCIDENT_C / METER_GREY,
  );
}
