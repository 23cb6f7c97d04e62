import type { Nothing } from "./coded.js";

/** Reasons on white balance. */
export interface WhiteBalanceReasons {
  kelvin_leaves_the_water: { cct_K: number; left: number; path_m: number };
  balance_again: { times: number; first_m: number; tolerance: number };
  one_balance_serves: { tolerance: number };
  balance_in_reach: Nothing;
  balance_falls_short: { depth_m: number; short_stops: number; cast: number };
}
