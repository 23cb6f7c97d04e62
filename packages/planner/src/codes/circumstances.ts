import type { Nothing } from "./coded.js";

/** What the light, the place or the camera of a dive ask for beside the plan: as somebody says it who has dived there before. */
export interface CircumstanceReasons {
  /** Down to where the camera reaches a balance with the filter, and without it: that is what so dense a filter is for. */
  dense_for_balance: { with_m: number; without?: { to_m: number } };
  /** How much brighter than inside the open water behind the mouth is; with video lights along, how much darker the camera can do with. */
  mouth_is_brighter: { stops: number; lamps?: { spare_stops: number } };
  /** With the sun in the picture, how much brighter than the subject the whole picture is. */
  subject_against_light: { stops: number };
  low_sun_moves: { elevation_deg: number };
  cloud_lights_evenly: Nothing;
  weed_tints: Nothing;
  /** Water that takes more of blue than of red. */
  blue_is_missing: { depth_m: number };
  /** What goes before automatic colours, and what can be done with them afterwards. */
  automatic_colours: { sun_behind?: true };
}
