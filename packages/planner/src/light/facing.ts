import type { Axis } from "@sunfathom/optics";
import type { SunSide, View } from "../scene/scene.js";
import { normalCdf } from "../uncertainty/normal.js";
import type { Sun } from "./sun.js";

const RADIAN = Math.PI / 180;

/** Angle between the sun and the way from the subject to the camera, seen from above, degrees: any in these bounds alike. */
const SIDES: Record<SunSide, readonly [least: number, most: number]> = {
  behind_camera: [0, 60],
  beside: [60, 120],
  in_frame: [120, 180],
  unknown: [0, 180],
};
/** How far a heading or a subject that is to face the sun may be off, standard deviation: from memory. */
const POSE_SD_DEG = 15;

const cosine = (degrees: number): number => Math.cos(degrees * RADIAN);

/** Cosine of an angle anywhere between two, at z standard deviations of a normal spread that brightens with it: its median at 0. */
const withinSide = ([least, most]: readonly [number, number], z: number): number =>
  cosine(most - normalCdf(z) * (most - least));

/** Of a known angle that may be off: at z standard deviations nearer the sun, past which it turns away again. */
const about = (angle_deg: number, z: number): number => cosine(angle_deg - POSE_SD_DEG * z);

/**
 * Cosine of the angle, seen from above, between the sun and the way from the subject to the camera: 1 with the sun straight behind
 * the camera.
 * @param z standard deviations of what is not known of it; brighter above 0
 */
export function cosBehindCamera(
  { sun_side = "unknown", camera_heading_deg }: View,
  sun: Sun,
  z: number,
): number {
  if (camera_heading_deg !== undefined && sun.azimuth_deg !== undefined) {
    const off = Math.abs(((camera_heading_deg - sun.azimuth_deg) % 360) + 360) % 360;
    const fromSun_deg = Math.min(off, 360 - off);
    return about(180 - fromSun_deg, z);
  }
  return withinSide(SIDES[sun_side], z);
}

/** Sine of the angle by which the camera looks up. */
export const lookingUpSine = ({ camera_tilt_deg = 0 }: View): number => Math.sin(camera_tilt_deg * RADIAN);

/** The way from the subject to the camera, where that is where the subject faces. */
export const axisToCamera = (view: View, cosToSun: number): Axis => ({
  upSine: -lookingUpSine(view),
  cosToSun,
});

/** Straight up. */
export const AXIS_UP: Axis = { upSine: 1 };

/** Level, towards the sun. */
export const axisToSun = (z: number): Axis => ({ upSine: 0, cosToSun: about(0, z) });
