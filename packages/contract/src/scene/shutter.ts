import { sceneDefaults } from "./defaults.js";

/** Shortest exposure time of a scene, in seconds. */
export const shortestShutter_s = 0.00001;

/**
 * Exposure time from a frame rate and a shutter angle.
 * @param frameRate_fps frames per second, above 0; 25 when left out
 * @param shutterAngle_deg 1 to 360; 180 when left out
 * @returns seconds, to 8 decimals, so that 24 fps does not fill a line with digits
 */
export function shutterOfFrame_s(
  frameRate_fps: number = sceneDefaults.frame_rate_fps,
  shutterAngle_deg: number = sceneDefaults.shutter_angle_deg,
): number {
  return Math.round((shutterAngle_deg / 360 / frameRate_fps) * 1e8) / 1e8;
}
