import { flatLampNames } from "../scene/flat-lamp-names.js";
// Fields that each rule concerns: it is not asked where one of them is not well formed. Apart from the rules, which every page that
// computes needs before it starts, and these only where a scene is refused; for the same reason nothing is imported here. A test holds
// them to the lists of names that rules go by.

import type { MountingScene } from "../scene/mounting/scene.js";
import type { Scene } from "../scene/scene.js";
import type { SceneRuleParameters } from "./all.js";
import type { MountingRuleParameters } from "./mounting.js";

/** Fields by the code of a rule. One that is left out is an error of the compiler. */
type Concerns<Codes, S> = Readonly<Record<keyof Codes & string, readonly (keyof S & string)[]>>;

const ofWater = [
  "water_type",
  "chlorophyll_mg_m3",
  "secchi_depth_m",
  "visibility_m",
  "kd_samples",
  "card_samples",
] as const;
const ofPlaceAndTime = [
  "daylight_basis",
  "latitude_deg",
  "longitude_deg",
  "time",
  "local_time",
  "time_zone",
] as const;
const ofShutter = ["shutter_s", "frame_rate_fps", "shutter_angle_deg"] as const;

export const sceneRuleConcerns: Concerns<SceneRuleParameters, Scene> = {
  one_water_basis: ofWater,
  water_companions: [...ofWater, "water_hue", "transfer_curve", "locked_exposure", "locked_balance"],
  kd_samples_rising: ["kd_samples"],
  card_exposure_whole: ["card_samples"],
  card_gains_whole: ["card_samples"],
  sun_with_basis_sun: ["daylight_basis", "sun_elevation_deg"],
  place_with_basis_place_time: ofPlaceAndTime,
  place_and_time_whole: ofPlaceAndTime,
  day_exists: ["time", "local_time"],
  one_depth: ["depth_m", "min_depth_m", "max_depth_m"],
  depths_in_order: ["min_depth_m", "max_depth_m"],
  one_sun_side: ["sun_side", "camera_heading_deg"],
  heading_with_place_time: ["camera_heading_deg", ...ofPlaceAndTime],
  one_bottom: ["bottom", "bottom_reflectance"],
  bottom_with_depth: ["bottom", "bottom_depth_m"],
  bottom_below_camera: ["bottom_depth_m", "depth_m", "max_depth_m"],
  bottom_reflectance_rising: ["bottom_reflectance"],
  iso_limits_in_order: ["min_iso", "max_iso", "camera_class"],
  iso_within_limits: ["iso", "min_iso", "max_iso", "camera_class"],
  f_number_limits_in_order: ["min_f_number", "max_f_number", "camera_class"],
  f_number_within_limits: ["f_number", "min_f_number", "max_f_number", "camera_class"],
  white_balance_cct_K_limits_in_order: ["white_balance_min_cct_K", "white_balance_max_cct_K", "camera_class"],
  one_shutter: ofShutter,
  shutter_within_frame: ofShutter,
  shutter_not_too_short: ofShutter,
  one_recording_curve: ["recording_curve", "recording_curve_points"],
  recording_curve_points_rising: ["recording_curve_points"],
  recording_curve_points_whole: ["recording_curve_points"],
  sensor_samples_rising: ["sensor_samples"],
  sensor_samples_usable: ["sensor_samples"],
  kelvin_with_mode: ["white_balance_mode", "white_balance_kelvin_K"],
  kelvin_within_limits: [
    "white_balance_kelvin_K",
    "white_balance_min_cct_K",
    "white_balance_max_cct_K",
    "camera_class",
  ],
  auto_exposure_free: ["exposure_mode", "iso", "f_number", "shutter_s"],
  card_balance_not_auto: ["white_balance_mode", "locked_balance"],
  one_lens_filter: [
    "filter_kind",
    "filter_density",
    "filter_stops",
    "filter_samples",
    "filter_transmittance",
  ],
  one_filter_strength: ["filter_density", "filter_stops", "kit"],
  lens_filter_pair: ["filter_kind", "filter_density", "filter_stops"],
  filter_transmittance_rising: ["filter_transmittance"],
  filter_samples_agree: ["filter_samples", "kit"],
  kit_ids_unique: ["kit"],
  kit_filters: ["kit"],
  kit_curves_rising: ["kit"],
  lamp_colour: ["lamps", "lamp_cct_K", "lamp_led"],
  lamp_filter_pair: ["lamps", "lamp_filter_kind", "lamp_filter_density"],
  lamps_once: ["lamps", ...flatLampNames],
  lamp_complete: flatLampNames,
  lead_distance_with_stops: ["wanted_lead_distance_m", "wanted_lead_stops"],
  overhead_parts: ["overhead", "daylight_open_share", "ice_thickness_m", "snow_thickness_m"],
  cave_is_dark: ["overhead", ...ofPlaceAndTime],
  mounting_kinds: ["port_kind", "lens_kind"],
};

export const mountingRuleConcerns: Concerns<MountingRuleParameters, MountingScene> = {
  lens_field_given: ["field_of_view_deg", "focal_length_mm", "sensor_diagonal_mm"],
  dome_radius_with_dome: ["port_kind", "dome_radius_mm"],
  rear_opening_whole: ["rear_opening_width_mm", "rear_opening_height_mm"],
  ring_ids_unique: ["rings"],
  port_outer_beyond_thread: ["port_outer_diameter_mm", "port_thread_mm"],
};
