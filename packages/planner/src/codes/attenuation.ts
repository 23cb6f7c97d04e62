import type { Nothing } from "./coded.js";

/** Reasons on attenuation. */
export interface AttenuationReasons {
  /** What each channel has lost down to this depth. */
  red_goes_first: { red_stops: number; green_stops: number; blue_stops: number; depth_m: number };
  no_daylight_relative: Nothing;
  /** Mean cosine of the way that light takes below the surface. */
  sun_path: { mu0: number };
}
