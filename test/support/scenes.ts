/**
 * Scenes for tests, resolved as the contract's defaults would, but over deep water, so that each is as deep as it says and nothing
 * more: to be varied with a spread.
 */
import type { Lamp, Scene } from "../../packages/planner/src/scene/scene.js";

/** Camera of the scenes: ISO 200 to 3200, f/2.8 to f/16, 1/50 s, 8 bits, balance from 2500 to 10 000 K within |duv| 0.03. */
const CAMERA = {
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

const BY_DAY = {
  daylight_basis: "sun",
  cloud_oktas: 0,
  wind_speed_m_s: 4,
  subject_distance_m: 1,
  subject_facing: "camera",
  sun_side: "behind_camera",
  camera_tilt_deg: 0,
  bottom: "none",
  filter_change_underwater: "none",
  lamps: [],
} as const;

/** A scene of one depth or, with two depths, of the range between them. */
export function daylightScene(
  water_type: string,
  sun_elevation_deg: number,
  min_depth_m: number,
  max_depth_m = min_depth_m,
): Scene {
  return { ...CAMERA, ...BY_DAY, lamps: [], water_type, sun_elevation_deg, min_depth_m, max_depth_m };
}

/** The same, with pictures that are graded by a profile of a chart: the mildest of finishes, in which differences are small. */
export const gradedScene = (...dive: Parameters<typeof daylightScene>): Scene => ({
  ...daylightScene(...dive),
  finish: "matched",
});

/** Two lamps of 4000 lm and 5600 K with a beam of 100 degrees in water, 0.8 m from the subject. */
export const TWO_LAMPS: Lamp = {
  flux_lm: 4000,
  count: 2,
  beam_angle_deg: 100,
  beam_angle_medium: "water",
  cct_K: 5600,
  distance_m: 0.8,
};

/** The same scene with the sun gone. */
export function atNight({ sun_elevation_deg: _, ...scene }: Scene): Scene {
  return { ...scene, daylight_basis: "none" };
}

/** The same scene with its water given as measured attenuation, the type's name left out. */
export function withKd(
  { water_type: _, ...scene }: Scene,
  kd_samples: NonNullable<Scene["kd_samples"]>,
): Scene {
  return { ...scene, kd_samples };
}

export const OUTER_REEF_MORNING = daylightScene("IB", 40, 5, 18);
export const HARBOUR_WALL_AFTERNOON = daylightScene("3C", 50, 4, 12);
export const NIGHT_WRECK: Scene = { ...atNight(daylightScene("IB", 45, 15)), lamps: [TWO_LAMPS] };
export const REEF_WITH_LAMPS: Scene = { ...daylightScene("IB", 50, 12), lamps: [TWO_LAMPS] };
export const REEF_IN_THE_SHALLOWS = daylightScene("IB", 40, 1.5);
export const DARK_AND_GREEN: Scene = { ...daylightScene("5C", 15, 14), max_iso: 800 };
/** A clear reef at noon: too bright for f/5.6 at ISO 400. */
export const BRIGHT_REEF: Scene = { ...daylightScene("IB", 70, 5), iso: 400, f_number: 5.6 };
