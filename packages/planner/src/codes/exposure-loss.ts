import type { Nothing } from "./coded.js";

/** Reasons on exposure loss. */
export interface ExposureLossReasons {
  too_bright: { depth_m: number; excess_stops: number; iso: number; f_number: number; density: number };
  aperture_can_close: { f_number: number };
  too_dark: { depth_m: number; shortfall_stops: number; iso: number; f_number: number };
  exposure_fits: { depth_m: number; iso: number; f_number: number; ev: number };
  /** How much brighter the picture is on the whole than its subject, in stops. */
  levels_apart: { depth_m: number; stops: number };
  /** How much darker the subject comes out where the camera meters the picture by itself, in stops. */
  auto_exposes_picture: { depth_m: number; stops: number };
  filter_makes_it_darker: { stops: number };
  any_filter_would_worsen: Nothing;
  port_takes: { stops: number };
  water_takes_most: { depth_m: number; depth_stops: number; total_stops: number };
  haze_is_the_limit: { distance_m: number; contrast_percent: number };
}
