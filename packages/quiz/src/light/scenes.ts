/** The scenes that questions are about: a stated, finite grid, so that what the planner says of them can be remembered. */
import type { Lamp, Scene } from "@sunfathom/planner";
import { remembered } from "./remember.js";

/** Waters that questions are about, clearest first; see the catalogue for their names. */
export const WATERS = ["IB", "II", "1C", "3C", "5C", "7C"] as const;
export type Water = (typeof WATERS)[number];

export const SUNS_DEG = [40, 50, 60] as const;

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
  filter_change_underwater: "none",
  finish: "in_camera",
} as const;

const sceneByDay = remembered(
  (water_type: Water, sun_elevation_deg: number, min_depth_m: number, max_depth_m: number): Scene => ({
    ...CAMERA,
    water_type,
    daylight_basis: "sun",
    sun_elevation_deg,
    cloud_oktas: 0,
    wind_speed_m_s: 4,
    min_depth_m,
    max_depth_m,
    subject_distance_m: 1,
    subject_facing: "camera",
    sun_side: "behind_camera",
    camera_tilt_deg: 0,
    bottom: "none",
    lamps: [],
  }),
);

/** A scene in daylight under a clear sky, at one depth or over a range; one object for one scene. */
export const byDay = (water: Water, sun_elevation_deg: number, min_m: number, max_m = min_m): Scene =>
  sceneByDay(water, sun_elevation_deg, min_m, max_m);

/** The same scene without daylight. */
export function atNight({ sun_elevation_deg: _, ...scene }: Scene): Scene {
  return { ...scene, daylight_basis: "none" };
}

/** Two equal white lamps with a beam of 100 degrees in water. */
export const twoLamps = (distance_m: number, flux_lm = 4000, cct_K = 5600): Lamp => ({
  flux_lm,
  count: 2,
  beam_angle_deg: 100,
  beam_angle_medium: "water",
  cct_K,
  distance_m,
});

/**
 * The same scene with a camera that can balance a card at any depth. With the reach of common cameras the balance is at its end
 * soon, and a new one would change nothing: what questions on balancing ask would have no answer.
 */
export const anyBalance = remembered(
  (scene: Scene): Scene => ({
    ...scene,
    white_balance_min_cct_K: 1500,
    white_balance_max_cct_K: 40000,
    white_balance_max_duv: 0.15,
  }),
);
