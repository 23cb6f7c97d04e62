import type { Finish, Scene } from "../scene/scene.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { type BalanceReach, balanceReach } from "./balance-reach.js";
import { type BalanceSetting, balanceSettingOf } from "./balance-setting.js";
import { type ExposureLimits, limitsOf } from "./exposure-settings.js";
import { PIXELS, type Pixels } from "./pixels.js";
import { sensorOf } from "./sensor.js";
import { type SensorProfile, sensorProfile } from "./sensor-profile.js";
import type { Transfer } from "./transfer.js";

/** What fills its place on the scale: a white card the top of it, or a grey card, or the mean of the picture, its own level. */
export type Metering = "white_card" | "grey_card" | "picture";

/** What is graded afterwards is exposed as much as it can be; what is looked at as it is, as a grey card asks for. */
export const meteringOf = ({ exposure_mode }: Scene, finish: Finish): Metering =>
  exposure_mode === "auto" ? "picture" : finish === "matched" ? "white_card" : "grey_card";

export interface CameraState {
  profile: SensorProfile;
  reach: BalanceReach;
  balance: BalanceSetting;
  metering: Metering;
  limits: ExposureLimits;
  bits: number;
  curve: Transfer;
  pixels: Pixels;
  fullWellScale: number;
}

/** @param finish by which the picture is judged; that of a grade where nothing is looked at before it */
export function cameraState(scene: Scene, nuisance: Nuisance, finish: Finish = "matched"): CameraState {
  const profile = sensorProfile(sensorOf(scene, nuisance));
  return {
    profile,
    reach: balanceReach(scene, profile),
    balance: balanceSettingOf(scene, profile),
    metering: meteringOf(scene, finish),
    limits: limitsOf(scene),
    bits: scene.bits,
    curve: scene.recording_curve_points ?? scene.recording_curve ?? "rec709",
    pixels: PIXELS[scene.camera_class ?? "compact"],
    fullWellScale: nuisance.fullWellScale,
  };
}
