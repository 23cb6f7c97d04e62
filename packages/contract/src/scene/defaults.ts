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
  camera_class: "compact",
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
  white_balance_mode: "card",
  exposure_mode: "manual",
  finish: "in_camera",
  filter_change_underwater: "none",
} as const;

/** Fields of a camera whose default goes by its class. */
type OfClass =
  | "min_f_number"
  | "max_f_number"
  | "white_balance_min_cct_K"
  | "white_balance_max_cct_K"
  | "white_balance_max_duv";

const phone = {
  min_f_number: 1.8,
  max_f_number: 1.8,
  white_balance_min_cct_K: 2500,
  white_balance_max_cct_K: 8000,
  white_balance_max_duv: 0.02,
};

/** What cameras of a class are taken for where they differ from `sceneDefaults`: all from memory. */
const classDefaults: Readonly<Record<string, Partial<Record<OfClass, number>>>> = {
  phone,
  phone_merged: phone,
  action: { min_f_number: 2.8, max_f_number: 2.8, white_balance_max_duv: 0.02 },
  cinema: { white_balance_min_cct_K: 2000, white_balance_max_cct_K: 15000, white_balance_max_duv: 0.05 },
};

/** The default of a camera's field, by the camera's class where it says one. */
export const cameraDefault = <Field extends OfClass | "min_iso" | "max_iso">(
  { camera_class }: { camera_class?: string | undefined },
  field: Field,
): number =>
  classDefaults[camera_class ?? sceneDefaults.camera_class]?.[field as OfClass] ?? sceneDefaults[field];

/** Where the sea floor lies below the deepest subject unless its depth is given. Common practice, no published source. */
export const bottomBelowDeepest_m = 3;

/** The same for each lamp; `cct_K` only where no LED is named. */
export const lampDefaults = {
  count: 1,
  beam_angle_deg: 100,
  beam_angle_medium: "water",
  cct_K: 5600,
} as const;

/** How far from the subject lamps are asked to lead where neither that is said nor a lamp is there: at arm's length. From memory. */
export const wantedLeadFrom_m = 0.8;
