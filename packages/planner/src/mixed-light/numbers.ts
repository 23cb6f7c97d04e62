import { add, illuminance_lx, multiply, pathTransmittance, type Spectrum } from "@sunfathom/optics";
import { castBetween, redExcessStops } from "../camera/cast.js";
import { perPlace, type Vector3 } from "../camera/matrix.js";
import { rawOf, type SensorProfile } from "../camera/sensor-profile.js";
import { lampsAtPort } from "../light/lamps.js";
import { lampLightAt, towardsCamera, type Underwater } from "../light/underwater.js";
import { valueAt } from "../lists/non-empty.js";
import { lightsAt } from "./lights.js";
import { hazeOverGrey } from "./lit-haze.js";

/** What one evaluation of the model says of the two lights at one depth; logarithms to base 2. */
export interface Numbers {
  red: number;
  green: number;
  blue: number;
  split: number;
  splitToLamps: number;
  splitBetween: number;
  redExcess: number;
  log2LampLux: number;
  log2DaylightLux: number;
  waterRed: number;
  waterGreen: number;
  waterBlue: number;
  log2LitHaze: number;
}

/** Log to base 2 of an illuminance; of a millionth of a lux where it is dark, so that differences stay finite. */
const log2Lux = (light: Spectrum): number => Math.log2(Math.max(1e-6, illuminance_lx(light)));

/** Haze less than this is none: a narrow beam may miss the line of sight altogether. */
const LEAST_HAZE = 1e-6;

/** @param mixed whether both lights are there: what compares them is 0 otherwise and not to be shown. */
export function numbersAt(world: Underwater, depth_m: number, mixed: boolean): Numbers {
  const { daylight, lamps, profile } = lightsAt(world, depth_m);
  const path = towardsCamera(world);
  const hasLamps = world.scene.lamps.length > 0;
  const [red, green, blue] = mixed
    ? stopsBetween(profile, multiply(daylight, path), multiply(lamps, path))
    : [0, 0, 0];
  const [waterRed, waterGreen, waterBlue] = hasLamps ? waterLoss(world, profile) : [0, 0, 0];
  const both = add(daylight, lamps);
  const between = daylight.map((d, i) => Math.sqrt(d * valueAt(lamps, i)));
  return {
    red,
    green,
    blue,
    split: mixed ? castBetween(profile, daylight, both) : 0,
    splitToLamps: mixed ? castBetween(profile, lamps, daylight) : 0,
    splitBetween: mixed ? castBetween(profile, between, daylight) : 0,
    redExcess: mixed ? redExcessStops(profile, daylight, both) : 0,
    log2LampLux: log2Lux(lamps),
    log2DaylightLux: log2Lux(daylight),
    waterRed,
    waterGreen,
    waterBlue,
    log2LitHaze: hasLamps ? Math.log2(Math.max(LEAST_HAZE, hazeOverGrey(world))) : 0,
  };
}

/** Channel by channel, how far `light` outshines `reference`, in stops. */
function stopsBetween(profile: SensorProfile, reference: Spectrum, light: Spectrum): Vector3 {
  const below = rawOf(profile, reference);
  const above = rawOf(profile, light);
  return perPlace((k) => Math.log2(above[k] / below[k]));
}

/** What the water takes from the lamps' light on its way to the subject and on to the camera, per channel, in stops. */
function waterLoss(world: Underwater, profile: SensorProfile): Vector3 {
  const { lamps, subject_distance_m } = world.scene;
  const path_m = Math.min(...lamps.map((lamp) => lamp.distance_m)) + subject_distance_m;
  const port = lampsAtPort(lamps);
  return stopsBetween(profile, multiply(port, pathTransmittance(world.path_per_m, path_m)), port);
}

/** How much darker the lamps light what lies `behind_m` farther than the subject, in stops of luminance. */
export function falloffStops(world: Underwater, behind_m: number): number {
  const nearest = Math.min(...world.scene.lamps.map((lamp) => lamp.distance_m));
  const there = lampLightAt(world, { distance_m: nearest + behind_m });
  return Math.log2(illuminance_lx(lampLightAt(world, { distance_m: nearest })) / illuminance_lx(there));
}
