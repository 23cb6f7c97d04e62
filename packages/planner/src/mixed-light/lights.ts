import { add, type Spectrum } from "@sunfathom/optics";
import { castBetween } from "../camera/cast.js";
import { sensorOf } from "../camera/sensor.js";
import { type SensorProfile, sensorProfile } from "../camera/sensor-profile.js";
import { cardDaylightAt } from "../light/daylight-at-depth.js";
import { lampLightAt, type Underwater } from "../light/underwater.js";
import type { MixedLightVerdict } from "../result/mixed-light.js";

/** A split that is seen at a glance; below it the lights are taken to live together: a judgement. */
export const VISIBLE_SPLIT_DELTA_E00 = 5;

/** Both lights on the subject, W m^-2 nm^-1, and the sensor that looks at them. */
export interface Both {
  daylight: Spectrum;
  lamps: Spectrum;
  profile: SensorProfile;
}

export const lightsAt = (world: Underwater, depth_m: number): Both => ({
  daylight: cardDaylightAt(world, depth_m),
  lamps: lampLightAt(world),
  profile: sensorProfile(sensorOf(world.scene, world.nuisance)),
});

/** Which of two lights leads, by what one balance would leave. */
export function leadOf({ daylight, lamps, profile }: Both): "lamps_lead" | "daylight_leads" | "lights_fight" {
  const both = add(daylight, lamps);
  if (castBetween(profile, lamps, both) <= VISIBLE_SPLIT_DELTA_E00) return "lamps_lead";
  if (castBetween(profile, daylight, both) <= VISIBLE_SPLIT_DELTA_E00) return "daylight_leads";
  return "lights_fight";
}

/** Which light leads on the subject. */
export function verdictAt(world: Underwater, depth_m: number): MixedLightVerdict {
  if (world.scene.lamps.length === 0) return "daylight_only";
  if (!world.daylight) return "lamps_only";
  return leadOf(lightsAt(world, depth_m));
}
