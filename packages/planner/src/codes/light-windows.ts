import type { WindowAim } from "../light-windows/objective.js";
import type { Nothing } from "./coded.js";

/** Why windows of light are ranked as they are. */
export interface LightWindowReasons {
  /** Of a window: the first of its day. */
  window_best: { elevation_deg: number; cloud_oktas: number };
  /** The same with nothing ranked behind it. */
  window_only: { elevation_deg: number; cloud_oktas: number };
  /** Of a window behind the first one: colour error that it has more, and light that it has less, each below 0 where it is the better one. */
  window_behind: { more_delta_e00: number; less_stops: number };
  /** The same where nobody can tell it from the first one. */
  window_as_good: { more_delta_e00: number; less_stops: number };
  windows_ranked: { aim: WindowAim; percent_per_stop: number };
  /** Days, of all, with hours without a forecast, which are taken for clear. */
  windows_sky_assumed: { days: number; of_days: number };
  /** Entries of the forecast that lie in no window. */
  windows_forecast_unused: { entries: number };
  /** Windows in which the sun does not stand high enough all the time, and what that is. */
  windows_sun_too_low: { windows: number; min_elevation_deg: number };
  windows_interpolated: { delta_e00: number; stops: number };
  windows_spread_shared: Nothing;
}
