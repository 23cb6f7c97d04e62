import type { Scene } from "../scene/scene.js";

export const LENS_EVENTS = ["balance", "filter_on", "filter_off"] as const;
export type LensEvent = (typeof LENS_EVENTS)[number];

/** A depth at a time since the dive began. */
export interface DiveSample {
  time_s: number;
  depth_m: number;
}

/** What was filmed in one go, in the dive's time. */
export interface DiveClip {
  id?: string;
  from_s: number;
  to_s: number;
}

/** What was done on the dive. */
export interface DoneEvent {
  time_s: number;
  event: LensEvent;
}

/** A grey card filmed on the dive: linear values after balance, 1 for the brightest possible. */
export interface CardFrame {
  depth_m: number;
  /** Since the dive began, where it is known. */
  time_s?: number;
  red: number;
  green: number;
  blue: number;
  iso: number;
  shutter_s: number;
  f_number: number;
  /** What the white balance multiplied each channel by. */
  red_gain: number;
  green_gain: number;
  blue_gain: number;
  through_filter: boolean;
  /** White had just been balanced on this card: what cast is left is what the camera cannot reach. */
  balanced: boolean;
}

/** A dive as it was dived, with the site's scene. */
export interface TimelinePlan {
  /** Its depths are those that were filmed; where it has a time, that is when the dive began. */
  scene: Scene;
  /** In the order of time, two at least. */
  samples: readonly DiveSample[];
  /** In the order of time. */
  clips: readonly DiveClip[];
  /** In the order of time; absent where nothing is known of what was done. */
  events?: readonly DoneEvent[];
  /** Grey cards of the dive, by which the plan is marked. */
  cardFrames?: readonly CardFrame[];
}
