/** What a scene is taken to be where the caller does not say. The resolved scene lists what was taken from here. */
export const sceneDefaults = {
  daylight_basis: "sun",
  sun_elevation_deg: 45,
  cloud_oktas: 0,
  wind_speed_m_s: 4,
  subject_distance_m: 1,
  subject_facing: "camera",
  sun_side: "behind_camera",
  camera_tilt_deg: 0,
  bottom: "coral",
  min_iso: 100,
  max_iso: 6400,
  min_f_number: 2.8,
  max_f_number: 16,
  frame_rate_fps: 25,
  shutter_angle_deg: 180,
  bits: 8,
  recording_curve: "rec709",
  white_balance_min_cct_K: 2500,
  white_balance_max_cct_K: 10000,
  white_balance_max_duv: 0.03,
  filter_change_underwater: "none",
} as const;

/** Where the sea floor lies below the deepest subject unless its depth is given. Common practice, no published source. */
export const bottomBelowDeepest_m = 3;

/** The same for each lamp; `cct_K` only where no LED is named. */
export const lampDefaults = {
  count: 1,
  beam_angle_deg: 100,
  beam_angle_medium: "water",
  cct_K: 5600,
} as const;
