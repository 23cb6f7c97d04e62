import type { Reason } from "../codes/coded.js";
import type { LightWindowReasons } from "../codes/light-windows.js";
import type { FilterVerdict } from "../codes/named-filter.js";
import type { CloudBasis } from "../light-windows/days.js";
import type { WindowAim } from "../light-windows/objective.js";
import type { AnswerParts, Estimate } from "./common.js";

export interface LightWindowsResult extends AnswerParts<LightWindowReasons> {
  aim: WindowAim;
  /** In the exponent of two, for each stop of light (see `objective.ts`). */
  weight_per_stop: number;
  days: WindowDay[];
  /** The best window of all days. */
  best: { date: string; from_local_time: string };
}

export interface WindowDay {
  date: string;
  /** Windows that are not listed: they are ranked behind these. */
  windows_behind: number;
  /** Windows in which the sun does not stand high enough all the time. */
  windows_without_sun: number;
  /** The best first, up to three. */
  windows: RankedWindow[];
}

export interface RankedWindow {
  from_local_time: string;
  to_local_time: string;
  /** Its begin in UTC, RFC 3339. */
  from_time: string;
  /** Mean over its moments, as are all figures of a window. */
  sun_elevation_deg: number;
  cloud_oktas: number;
  cloud_basis: CloudBasis;
  illuminance_lx: Estimate;
  red_left_percent: Estimate;
  colour_error_delta_e00: Estimate;
  /** What the aim wants, against the best window of all days: 0 for it, below 0 where there is less. */
  light_stops_over_best: number;
  /** By how much its cost is above that of the first window of its day. */
  costs_more_percent: number;
  /** Nobody can tell it from the first one of its day. */
  as_good: boolean;
  filter_kind: FilterVerdict;
  filter_density?: number;
  filter_id?: string;
  /** Colour error that it leaves less than no filter. */
  filter_gains_delta_e00: number;
  exposure_value_ev100: number;
  iso: number;
  f_number: number;
  shutter_s: number;
  /** Above 0 where even the least sensitive settings are too bright, below 0 where the most sensitive are too dark. */
  off_by_stops: number;
  reason: Reason<LightWindowReasons>;
}
