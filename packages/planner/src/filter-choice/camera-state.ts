import { balanceReach } from "../camera/balance-reach.js";
import { limitsOf } from "../camera/exposure-settings.js";
import { sensorProfile } from "../camera/sensor-profile.js";
import type { Scene } from "../scene/scene.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import type { CameraState } from "./merit.js";

export function cameraState(scene: Scene, { crosstalkSd, fullWellScale }: Nuisance): CameraState {
  const profile = sensorProfile(crosstalkSd);
  return {
    profile,
    reach: balanceReach(scene, profile),
    limits: limitsOf(scene),
    bits: scene.bits,
    fullWellScale,
  };
}
