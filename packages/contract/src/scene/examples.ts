import type { Scene } from "./scene.js";

const camera = {
  min_iso: 200,
  max_iso: 3200,
  min_f_number: 2.8,
  max_f_number: 16,
  shutter_s: 0.02,
} as const satisfies Scene;

const twoLamps = {
  lamp_flux_lm: 4000,
  lamp_count: 2,
  lamp_beam_angle_deg: 100,
  lamp_cct_K: 5600,
  lamp_distance_m: 0.8,
} as const satisfies Scene;

/** What is known on a boat. In the middle of an ocean, where nobody dives. */
const seenFromTheBoat = {
  latitude_deg: -47,
  longitude_deg: -128,
  time_zone: "Etc/GMT+9",
  local_time: "2027-01-16T10:00",
  cloud_oktas: 2,
  visibility_m: 25,
  water_hue: "blue",
} as const satisfies Scene;

export interface SceneExample {
  summary: string;
  scene: Scene;
}

/** Scenes to learn from and to try. They take scalar fields alone, so that each fits a query string too. */
export const sceneExamples = {
  seen_from_the_boat: {
    summary: "What is known on a boat: place, local time, water that is blue and clear for 25 m",
    scene: { ...seenFromTheBoat, min_depth_m: 5, max_depth_m: 18 },
  },
  lights_on_the_boat: {
    summary: "The same at one depth, with two video lights",
    scene: {
      ...seenFromTheBoat,
      depth_m: 12,
      lamp_flux_lm: 4000,
      lamp_count: 2,
      lamp_distance_m: 0.8,
    },
  },
  outer_reef_morning: {
    summary: "Outer reef in the morning, video lights off",
    scene: { water_type: "IB", sun_elevation_deg: 40, min_depth_m: 5, max_depth_m: 18, ...camera },
  },
  harbour_wall_afternoon: {
    summary: "Harbour wall in the afternoon, greenish coastal water",
    scene: { water_type: "3C", sun_elevation_deg: 50, min_depth_m: 4, max_depth_m: 12, ...camera },
  },
  night_wreck: {
    summary: "Wreck at night, two video lights",
    scene: { water_type: "IB", daylight_basis: "none", depth_m: 15, ...camera, ...twoLamps },
  },
  reef_with_lamps: {
    summary: "Reef by day, with the same two video lights",
    scene: { water_type: "IB", sun_elevation_deg: 50, depth_m: 12, ...camera, ...twoLamps },
  },
} as const satisfies Record<string, SceneExample>;

export type SceneExampleName = keyof typeof sceneExamples;
