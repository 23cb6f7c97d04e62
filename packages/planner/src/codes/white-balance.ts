import type { Nothing } from "./coded.js";

/** Reasons on white balance. */
export interface WhiteBalanceReasons {
  kelvin_leaves_the_water: { cct_K: number; left: number; path_m: number };
  balance_again: { times: number; first_m: number; tolerance: number };
  one_balance_serves: { tolerance: number };
  /** What a balance set in kelvin, or found by the camera itself, leaves on grey, and what one on a card would. */
  kelvin_balance_leaves: { cct_K: number; depth_m: number; cast: number; card_cast: number };
  auto_balance_leaves: { depth_m: number; cast: number; card_cast: number };
  balance_in_reach: Nothing;
  balance_falls_short: { depth_m: number; short_stops: number; cast: number };
}
