import { type RuleCode, shortestShutter_s } from "@sunfathom/contract";

/** What each rule between fields says, by its code. */
export const ruleMeanings: Readonly<Record<RuleCode, string>> = {
  one_water_basis: "The water is described in exactly one way.",
  water_companions:
    "`water_hue` goes with `secchi_depth_m` and `visibility_m`; `transfer_curve`, `locked_exposure` and `locked_balance` go with `card_samples`.",
  kd_samples_rising: "The wavelengths of `kd_samples` rise from sample to sample.",
  card_exposure_whole: "A card sample has all of `iso`, `shutter_s`, `f_number`, or none.",
  card_gains_whole: "A card sample has all of `red_gain`, `green_gain`, `blue_gain`, or none.",
  sun_with_basis_sun: "`sun_elevation_deg` goes with `daylight_basis` `sun` alone.",
  place_with_basis_place_time: "Place and time go with `daylight_basis` `place_time` alone.",
  place_and_time_whole:
    "`daylight_basis` `place_time` needs `latitude_deg`, `longitude_deg` and either `time` or `local_time` with `time_zone`.",
  day_exists: "The day of `time` or `local_time` is one that its month has.",
  one_depth: "The depth is given as `depth_m`, or as `min_depth_m` together with `max_depth_m`.",
  depths_in_order: "`min_depth_m` is not below `max_depth_m` in the water.",
  one_sun_side: "Where the sun stands is given as `sun_side` or as `camera_heading_deg`.",
  heading_with_place_time:
    "`camera_heading_deg` goes with `daylight_basis` `place_time` alone, which says where the sun stands.",
  one_bottom: "The sea floor is given as `bottom` or as `bottom_reflectance`.",
  bottom_with_depth: "`bottom_depth_m` goes with a sea floor: not with `bottom` `none`.",
  bottom_below_camera: "The sea floor does not lie above what is filmed.",
  bottom_reflectance_rising: "The wavelengths of `bottom_reflectance` rise from sample to sample.",
  iso_limits_in_order: "`min_iso` is not above `max_iso`.",
  iso_within_limits: "`iso` lies between `min_iso` and `max_iso`.",
  f_number_limits_in_order: "`min_f_number` is not above `max_f_number`.",
  f_number_within_limits: "`f_number` lies between `min_f_number` and `max_f_number`.",
  white_balance_cct_K_limits_in_order: "`white_balance_min_cct_K` is below `white_balance_max_cct_K`.",
  one_shutter: "The exposure time is given as `shutter_s`, or by `shutter_angle_deg` and `frame_rate_fps`.",
  shutter_within_frame: "`shutter_s` is no longer than a frame at `frame_rate_fps`.",
  shutter_not_too_short: `The exposure time from \`frame_rate_fps\` and \`shutter_angle_deg\` is at least ${shortestShutter_s} s.`,
  one_lens_filter:
    "The lens filter is given as `filter_kind` and `filter_density`, or as `filter_transmittance`.",
  lens_filter_pair: "`filter_kind` and `filter_density` go together.",
  filter_transmittance_rising: "The wavelengths of `filter_transmittance` rise from sample to sample.",
  kit_ids_unique: "No two things of the kit have the same `id`.",
  kit_filters:
    "A filter of the kit has `filter_kind` with `filter_density`, or `filter_transmittance`; a lamp has none of them.",
  kit_curves_rising: "The wavelengths of a `filter_transmittance` in the kit rise from sample to sample.",
  lamp_colour: "A lamp's colour is given as `cct_K` or as `led`.",
  lamp_filter_pair: "Kind and density of a lamp's filter go together.",
  lamps_once: "Lamps are given as the list `lamps`, or as one group of `lamp_` fields.",
  lamp_complete: "A group of `lamp_` fields has at least `lamp_flux_lm` and `lamp_distance_m`.",
  lens_field_given:
    "What the lens sees is given as `field_of_view_deg`, or as `focal_length_mm` with `sensor_diagonal_mm`.",
  dome_radius_with_dome: "`dome_radius_mm` goes with `port_kind` `dome` alone.",
  rear_opening_whole: "`rear_opening_width_mm` and `rear_opening_height_mm` go together.",
  ring_ids_unique: "No two rings have the same `id`.",
};
