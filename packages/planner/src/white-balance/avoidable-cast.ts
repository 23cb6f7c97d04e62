import { add, multiply, type Spectrum } from "@sunfathom/optics";
import { balanceReach, balanceToCard } from "../camera/balance-reach.js";
import { castOfRaw } from "../camera/cast.js";
import type { Vector3 } from "../camera/matrix.js";
import { sensorOf } from "../camera/sensor.js";
import { rawOf, sensorProfile } from "../camera/sensor-profile.js";
import type { Conditions } from "../light/conditions.js";
import { cardDaylightAt } from "../light/daylight-at-depth.js";
import { lensFilterOf } from "../light/lens-filter.js";
import { lampLightAt, towardsCamera, type Underwater } from "../light/underwater.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import type { ShiftBetween } from "./shift-between.js";

/** Light that a white card sends through water and filter to the sensor, W m^-2 nm^-1. */
export function cardLight(world: Underwater, filter: Spectrum, depth_m: number): Spectrum {
  const subject = add(cardDaylightAt(world, depth_m), lampLightAt(world));
  return multiply(multiply(subject, towardsCamera(world)), filter);
}

/** Cast that a balance made at one depth leaves at another, above what a new balance there would leave within reach. */
export function avoidableCast({ scene }: Conditions, world: Underwater): ShiftBetween {
  const profile = sensorProfile(sensorOf(scene, NOMINAL));
  const reach = balanceReach(scene, profile);
  const filter = lensFilterOf(scene, NOMINAL);
  const known = new Map<number, Vector3>();
  const rawAt = (depth_m: number): Vector3 => {
    const raw = known.get(depth_m) ?? rawOf(profile, cardLight(world, filter, depth_m));
    known.set(depth_m, raw);
    return raw;
  };
  const neutralAt = (raw: Vector3): Vector3 => {
    const { gains } = balanceToCard(reach, raw);
    return [1 / gains[0], 1 / gains[1], 1 / gains[2]];
  };
  return (balanced_m, seen_m) => {
    const seen = rawAt(seen_m);
    return castOfRaw(profile, neutralAt(rawAt(balanced_m)), seen) - castOfRaw(profile, neutralAt(seen), seen);
  };
}
