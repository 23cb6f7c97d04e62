import type { Scene } from "../scene/scene.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { type BalanceReach, balanceReach } from "./balance-reach.js";
import { type ExposureLimits, limitsOf } from "./exposure-settings.js";
import { PIXELS, type Pixels } from "./pixels.js";
import { sensorWith } from "./sensor.js";
import { type SensorProfile, sensorProfile } from "./sensor-profile.js";
import type { Transfer } from "./transfer.js";

export interface CameraState {
  profile: SensorProfile;
  reach: BalanceReach;
  limits: ExposureLimits;
  bits: number;
  curve: Transfer;
  pixels: Pixels;
  fullWellScale: number;
}

export function cameraState(scene: Scene, { crosstalkSd, fullWellScale }: Nuisance): CameraState {
  const profile = sensorProfile(sensorWith(crosstalkSd));
  return {
    profile,
    reach: balanceReach(scene, profile),
    limits: limitsOf(scene),
    bits: scene.bits,
    curve: scene.recording_curve_points ?? scene.recording_curve ?? "rec709",
    pixels: PIXELS[scene.camera_class ?? "compact"],
    fullWellScale,
  };
}
