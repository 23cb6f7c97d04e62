import type { Nothing } from "./coded.js";

/** What to do to set a white balance. */
export interface BalanceSteps {
  lamps_on: Nothing;
  card_in_lamp_light: Nothing;
  fill_frame: Nothing;
  no_kelvin_fits: Nothing;
  kelvin: { cct_K: number };
  keep_distance: Nothing;
  lamps_away: Nothing;
  filter_first: Nothing;
  card_upright: Nothing;
  going_down: { depths_m: readonly number[] };
  coming_up: { depths_m: readonly number[] };
  out_of_reach: { depth_m: number };
  light_changes: Nothing;
  /** The subject cannot be reached: something at its depth, as far away. */
  balance_near: { distance_m: number };
  leave_to_camera: Nothing;
  set_kelvin: { cct_K: number };
  card_would_do_better: { depth_m: number };
}
