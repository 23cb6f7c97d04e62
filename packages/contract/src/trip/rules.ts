import { type KitRuleParameters, kitRuleCodes } from "../kit-advice/rules.js";

/** What each error of a plan for a trip comes with that is none of one value alone, by its code. */
export interface TripRuleParameters extends KitRuleParameters {
  /** A day of the calendar that there is not. */
  date_exists: { date: string };
  dates_in_order: { first: string; last: string };
  dates_at_most: { days: number; most: number };
  /** What is open is shorter than a window. */
  opening_in_order: { opens_at: string; closes_at: string; least_min: number };
  /** A field of a site that goes beside it, or does not go with it. */
  site_field: { name: string };
  forecast_once: { date: string; first: string };
  aim_needs_lamps: Record<never, never>;
  /** An id that an earlier one of the same list has. */
  trip_ids_unique: { first: string };
  /** A field of a dive's scene, or of a camera, that stands elsewhere. */
  trip_dive_field: { name: string };
  trip_camera_field: { name: string };
  /** Something of the shelf that is no filter for a lens. */
  trip_shelf_filters: Record<never, never>;
  trip_guest_known: { id: string };
  /** More filters before more cameras on more dives than are judged. */
  trip_size: { judged: number; most: number };
  /** A dive is given as samples or as a file: `both` or neither is none. */
  profile_one_way: { both: boolean };
  uddf_not_well_formed: { line: number; column: number };
  /** What a file could do harm with; `most` elements in elements, or waypoints. */
  uddf_harmful: { case: "doctype" | "too_deep" | "too_many_samples"; line: number; most: number };
  /** Ids of the dives that there are, up to eight. */
  uddf_element: {
    case: "root" | "version" | "no_dive" | "no_such_dive" | "which_dive" | "no_samples";
    path: string;
    dives: string[];
  };
  /** `bound` is the most that it may be, or for `order` the time before it. */
  uddf_value: {
    case: "missing" | "not_a_number" | "out_of_range" | "order";
    path: string;
    line: number;
    value: string;
    bound: number;
  };
  /** A field of a site that stands beside it, or that the dive itself says. */
  beside_dive: { name: string };
  /** A sample that is not later than the one before it. */
  samples_in_order: { time_s: number; before_s: number };
  /** Times of day by the camera's clock. */
  clip_within_dive: { from: string; to: string; first: string; last: string };
  clips_apart: { other: string };
  event_within_dive: { time_s: number; first_s: number; last_s: number };
  events_need_filter: Record<never, never>;
  /** A card has its time or its depth: `both` or neither is none. */
  frame_one_place: { both: boolean };
  frames_need_filter: Record<never, never>;
}

export type TripRuleCode = keyof TripRuleParameters;

export const tripRuleCodes = [
  "date_exists",
  "dates_in_order",
  "dates_at_most",
  "opening_in_order",
  "site_field",
  "forecast_once",
  "aim_needs_lamps",
  ...kitRuleCodes,
  "trip_ids_unique",
  "trip_dive_field",
  "trip_camera_field",
  "trip_shelf_filters",
  "trip_guest_known",
  "trip_size",
  "profile_one_way",
  "uddf_not_well_formed",
  "uddf_harmful",
  "uddf_element",
  "uddf_value",
  "beside_dive",
  "samples_in_order",
  "clip_within_dive",
  "clips_apart",
  "event_within_dive",
  "events_need_filter",
  "frame_one_place",
  "frames_need_filter",
] as const satisfies readonly TripRuleCode[];
