import type { Scene } from "../scene/scene.js";
import { normalCdf } from "../uncertainty/normal.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import type { Aim } from "./lamps.js";

/** How far a lamp on an arm that is set by hand points beside the subject, up and down or left and right. From memory. */
const AIM_SIGMA_DEG = 8;
/** Of the distance to the camera: what fills the middle half of a frame some 55 degrees wide. From memory. */
const SUBJECT_RADIUS_SHARE = 0.26;

/**
 * How far off the aim is, at a standard normal deviate of it: of two independent errors, up and down and left and right, the distance
 * from the middle is spread as Rayleigh has it (exact), half of all aims being less than 1.18 standard deviations off.
 */
export const aimOff_deg = (deviate: number): number =>
  AIM_SIGMA_DEG * Math.sqrt(-2 * Math.log(1 - normalCdf(deviate)));

/** How lamps meet the subject of a scene. All are taken to be as far off as one. */
export const aimAt = ({ subject_distance_m }: Scene, { lampAim }: Nuisance): Aim => ({
  aimOff_deg: aimOff_deg(lampAim),
  subjectRadius_m: SUBJECT_RADIUS_SHARE * subject_distance_m,
});
