import {
  DOME_C,
  INCIDENT_C,
  type LightAtDepth,
  type Look,
  lightAtDepth,
  multiply,
  type Spectrum,
  scale,
} from "@sunfathom/optics";
import { AXIS_UP, axisToCamera, axisToSun, cosBehindCamera, lookingUpSine } from "./facing.js";
import { scaledFloor } from "./sea-floor.js";
import type { Sun } from "./sun.js";
import { type AtDepth, DARK, downwellingAt, type Underwater } from "./underwater.js";

/**
 * What a dome receptor meters of a solid subject, as the light on a flat card that asks for the same exposure: the constants of
 * ISO 2720 for both. A solid subject turns much of itself away from any one light, and is exposed for by as much more.
 */
export const DOME_AS_FLAT = INCIDENT_C / DOME_C;

const SHARES: AtDepth<LightAtDepth> = {};

/** How the subject stands in its daylight. */
function lookOf({ scene, floor, nuisance }: Underwater, sun: Sun): Look {
  const { facing, floorScale } = nuisance;
  const cosToSun = cosBehindCamera(scene, sun, facing);
  const axis =
    scene.subject_facing === "up"
      ? AXIS_UP
      : scene.subject_facing === "sun"
        ? axisToSun(facing)
        : axisToCamera(scene, cosToSun);
  return {
    axis,
    cosFromSun: -cosToSun,
    upSine: lookingUpSine(scene),
    ...(floor ? { floor: floorScale === 1 ? floor : scaledFloor(floor, floorScale) } : {}),
  };
}

/** What falls on subject and card and stands in the open water, over downwelling light; undefined without daylight. */
function sharesAt(world: Underwater, depth_m: number): LightAtDepth | undefined {
  const { daylight, sun } = world;
  if (!daylight || !sun) return undefined;
  return world.remembered(SHARES, depth_m, () => {
    const { sunAngleInWater_deg, directShare } = daylight.below;
    const geometry = { sunAngleInWater_deg, directShare, depth_m };
    return lightAtDepth(geometry, world.water, world.kd_per_m, lookOf(world, sun));
  });
}

function daylightAt(world: Underwater, depth_m: number, of: (shares: LightAtDepth) => Spectrum): Spectrum {
  const shares = sharesAt(world, depth_m);
  return shares ? multiply(downwellingAt(world, depth_m), of(shares)) : DARK;
}

/** Daylight on a solid subject, as a dome receptor in its place meters it, W m^-2 nm^-1; dark without daylight. */
export const subjectDaylightAt = (world: Underwater, depth_m: number): Spectrum =>
  scale(
    daylightAt(world, depth_m, ({ subject }) => subject),
    world.nuisance.uprightScale,
  );

/** Daylight on a flat card that faces as the subject does, W m^-2 nm^-1; dark without daylight. */
export const cardDaylightAt = (world: Underwater, depth_m: number): Spectrum =>
  scale(
    daylightAt(world, depth_m, ({ card }) => card),
    world.nuisance.uprightScale,
  );

/** Light of open water where the camera looks, as the light on a white card that looks as bright, W m^-2 nm^-1. */
export const openWaterAt = (world: Underwater, depth_m: number): Spectrum =>
  daylightAt(world, depth_m, ({ openWater }) => openWater);

/** Daylight on a level surface, with what a pale floor and the surface send down again, W m^-2 nm^-1. */
export const levelDaylightAt = (world: Underwater, depth_m: number): Spectrum =>
  daylightAt(world, depth_m, ({ downwelling }) => downwelling);
