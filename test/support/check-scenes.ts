/**
 * Scenes on which exposures are checked against practice, fixed before the light they are checked on was wired: water, sun, cloud,
 * floor, tilt, level and range. Exposure values at ISO 100 of a solid subject as a dome receptor meters it, behind a port that lets
 * 0.543 of radiance through less two reflections. Practice: sunny 16 (EV 14.64) less 1.5, 2, 2.5, 3 and 4 stops just under the
 * surface and at 1.8, 6, 9 and 15 m, common practice from memory of a diving handbook, no published source.
 */

/** Nothing here is left to a default. */
const FIXED = {
  daylight_basis: "sun",
  cloud_oktas: 0,
  wind_speed_m_s: 4,
  subject_distance_m: 1,
  subject_facing: "camera",
  sun_side: "behind_camera",
  camera_tilt_deg: 0,
  filter_change_underwater: "none",
  min_iso: 200,
  max_iso: 3200,
  min_f_number: 2.8,
  max_f_number: 16,
  shutter_s: 1 / 50,
  bits: 8,
  white_balance_min_cct_K: 2500,
  white_balance_max_cct_K: 10000,
  white_balance_max_duv: 0.03,
} as const;

/** Blue water of 15 m visibility, sun 60 degrees high, over deep water: no floor is said in practice. */
export const PRACTICE_SCENE = {
  ...FIXED,
  visibility_m: 15,
  water_hue: "blue",
  sun_elevation_deg: 60,
  bottom: "none",
} as const;

/** Depth, and the exposure values at ISO 100 between which practice lies there. */
export const PRACTICE_EV100: readonly { depth_m: number; from: number; to: number }[] = [
  { depth_m: 0.1, from: 13.1, to: 13.5 },
  { depth_m: 1.8, from: 12.6, to: 13 },
  { depth_m: 6, from: 12.1, to: 12.5 },
  { depth_m: 9, from: 11.6, to: 12 },
  { depth_m: 15, from: 10.6, to: 11 },
];

/** A shallow lagoon over sand, which is brighter than a reef over coral: type IA, sun 80 degrees high. */
export const LAGOON_OVER_SAND = {
  ...FIXED,
  water_type: "IA",
  sun_elevation_deg: 80,
  min_depth_m: 1,
  max_depth_m: 1,
  bottom: "sand",
  bottom_depth_m: 2,
} as const;

export const REEF_OVER_CORAL = {
  ...LAGOON_OVER_SAND,
  min_depth_m: 5,
  max_depth_m: 5,
  bottom: "coral",
  bottom_depth_m: 8,
} as const;
