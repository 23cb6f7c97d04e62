import type { FilterHolder, FilterMaterial, StepRing, WetLens } from "../scene/filter-mounting-scene.js";
import type { FilterChange } from "../scene/scene.js";
import type { Nothing } from "./coded.js";

/** What an assumed distance of the pupil is taken from. */
export type PupilBasis = "thread" | "sensor" | "window";

/** Reasons on where a filter goes. */
export interface FilterMountingReasons {
  mount_asked_does_not_fit: { asked: FilterHolder; instead: FilterHolder };
  mount_nothing_fits: Nothing;
  /** A colour filter and neutral density, one behind the other. */
  mount_no_room_for_two: Nothing;
  mount_on_lens: Nothing;
  mount_outside_fixed: Nothing;
  mount_outside_changed: Nothing;
  mount_over_window: Nothing;
  mount_behind_lens: Nothing;
  mount_window_is_port: Nothing;
  mount_front_bulges: Nothing;
  mount_lens_without_thread: Nothing;
  mount_field_too_wide: { field_deg: number };
  mount_hits_dome: { clearance_mm: number };
  mount_near_dome: { clearance_mm: number };
  mount_hits_port: { clearance_mm: number };
  mount_near_port: { clearance_mm: number };
  mount_zoom_room_unknown: { travel_mm: number };
  mount_wet_lens_in_the_way: { wet_lens: Exclude<WetLens, "none"> };
  mount_wet_lens_stacked: { wet_lens: Exclude<WetLens, "none">; thickness_mm: number };
  wet_lens_not_on_dome: Nothing;
  ghosts_inside: { in_air_stops: number };
  ghosts_outside: { in_water_stops: number; in_air_stops: number };
  filter_weighs: { weight_g: number; material: FilterMaterial };
  mount_not_before_dome: Nothing;
  mount_port_without_thread: Nothing;
  mount_flip_seat_unknown: Nothing;
  mount_clip_seat_unknown: Nothing;
  mount_frame_for_housing: Nothing;
  mount_holder_too_small: { inner_mm: number; port_mm: number };
  mount_holder_too_large: { inner_mm: number; port_mm: number };
  mount_holder_loose: { inner_mm: number; port_mm: number };
  mount_holder_to_ask_for: { port_mm: number };
  mount_dome_room_unknown: Nothing;
  mount_not_an_action_camera: Nothing;
  mount_lens_stays_on: Nothing;
  mount_fixed_for_dive: Nothing;
  mount_other_change: { allowed: Exclude<FilterChange, "none"> };
  rings_not_needed: { thread_mm: number };
  rings_filter_thread_assumed: { thread_mm: number };
  rings_close: { rings: readonly Pick<StepRing, "id" | "from_mm" | "to_mm">[]; thickness_mm: number };
  rings_missing: { from_mm: number; to_mm: number };
  rings_too_thick: { from_mm: number; to_mm: number };
  rings_wrong_way: StepRing;
  rings_narrow: { narrowest_mm: number; from_mm: number; to_mm: number };
  rings_step_down: { from_mm: number; to_mm: number };
  corners_clear: { light_percent: number; clear_half_deg: number; corner_half_deg: number };
  corners_slight: { light_percent: number; clear_half_deg: number };
  corners_dark: { light_percent: number; clear_half_deg: number; corner_half_deg: number };
  corners_black: { clear_half_deg: number; corner_half_deg: number; clear_diameter_needed_mm: number };
  corners_close: { least_light_percent: number; clear_diameter_safe_mm: number };
  corners_unknown: { clear_diameter_needed_mm: number };
  corners_test: Nothing;
  pupil_distance_assumed: { distance_mm: number; spread_percent: number; from: PupilBasis };
  format_assumed: { diagonal_mm: number };
  flat_port_narrows: { field_in_air_deg: number; field_in_water_deg: number; enlarged_percent: number };
  dome_keeps_field: Nothing;
  dome_brings_near: { from_vertex_mm: number; from_centre_mm: number };
  sheet_shifts_focus: { shift_mm: number; blur_mm: number; allowed_mm: number };
  sheet_all_in_reach: { from_centre_mm: number };
  sheet_infinity_hidden: { farthest_m: number };
  sheet_infinity_lost: { farthest_m: number; blur_mm: number };
  sheet_focus_unknown: Nothing;
  sheet_measure_opening: Nothing;
  sheet_cut: { width_mm: number; height_mm: number };
}
