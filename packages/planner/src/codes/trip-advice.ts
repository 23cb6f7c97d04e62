import type { FilterHolder } from "../scene/filter-mounting-scene.js";
import type { Nothing } from "./coded.js";
import type { NamedFilter } from "./named-filter.js";
import type { SummaryCodes } from "./summary.js";

/** Why a shared shelf is handed out as it is. */
export interface TripAdviceReasons {
  /** How many guests and pieces there are. */
  trip_handed_out: { guests: number; pieces: number };
  /** How often a piece would have served a guest better on a dive, and none was left. */
  trip_shelf_short: { times: number };
  /** Guests whom no piece of the shelf fits. */
  trip_nothing_fits: { guests: readonly string[] };
  /** Guests on whose cameras a filter is in use that asks for care. */
  trip_with_care: { guests: readonly string[] };
  /** Guests whose cameras say nothing of port and lens. */
  trip_fit_not_asked: { guests: number };
  /** Filters without a thread or a holder of their own. */
  trip_thread_assumed: { pieces: readonly string[] };
  /** Dives without a place, and without a height of the sun of their own. */
  trip_sun_assumed: { dives: readonly string[]; elevation_deg: number };
  trip_no_daylight: { dives: readonly string[] };
  trip_stays_on: Nothing;
  /** For whom the spread was worked out, of those with a filter or of those without one. */
  trip_spread_shared: { with_filter: boolean; guest: string; dive: string };
}

/** Where a filter is from. */
export type PieceFrom = "shelf" | "own";

/** A ring between two threads. */
export interface RingBetween {
  from_mm: number;
  to_mm: number;
}

/** The short plan of a guest on one dive: its own sentences, and those of a dive's plan. */
export interface TripPlanCodes
  extends Pick<
    SummaryCodes,
    | "no_filter"
    | "too_dark"
    | "expose"
    | "expose_by_itself"
    | "balance"
    | "balance_by_itself"
    | "balance_in_kelvin"
  > {
  trip_mount: { filter: NamedFilter; from: PieceFrom; holder?: FilterHolder; rings: readonly string[] };
  trip_too_bright: { depth_m: number; excess_stops: number };
  /** Night, or a roof that lets no daylight in. */
  trip_without_daylight: Nothing;
}
