/** Dives as callers send them, whose advice is kept as approved pages: the kinds of light, water, camera and cover that a course meets. */
import type { Scene } from "../../packages/sdk/src/index.js";

export interface Approved {
  page: string;
  /** What the dive is, in a line. */
  title: string;
  scene: Scene;
}

const twoLights = { flux_lm: 4000, count: 2, beam_angle_deg: 100, distance_m: 0.8 } as const;

export const DIVES: readonly Approved[] = [
  {
    page: "temperate-green",
    title: "Kelp in temperate green water: visibility 8 m, sun 35 degrees, half cloudy, 3 to 10 m, no lights",
    scene: {
      visibility_m: 8,
      water_hue: "green",
      sun_elevation_deg: 35,
      cloud_oktas: 4,
      min_depth_m: 3,
      max_depth_m: 10,
      bottom: "macroalgae",
      bottom_depth_m: 11,
      subject_distance_m: 0.7,
      camera_class: "interchangeable",
    },
  },
  {
    page: "cavern",
    title:
      "A cavern that still has daylight: visibility 25 m blue, sun 60 degrees, 8 to 15 m, two lights of 4000 lm",
    scene: {
      visibility_m: 25,
      water_hue: "blue",
      sun_elevation_deg: 60,
      overhead: "cavern",
      min_depth_m: 8,
      max_depth_m: 15,
      lamps: [twoLights],
      camera_class: "interchangeable",
    },
  },
  {
    page: "wreck-at-30",
    title:
      "Outside of a wreck at 30 m: visibility 20 m blue, sun 55 degrees, 22 to 30 m, two lights of 6000 lm",
    scene: {
      visibility_m: 20,
      water_hue: "blue",
      sun_elevation_deg: 55,
      min_depth_m: 22,
      max_depth_m: 30,
      subject_distance_m: 1.2,
      lamps: [{ ...twoLights, flux_lm: 6000, distance_m: 1 }],
      camera_class: "interchangeable",
    },
  },
  {
    page: "inside-a-wreck",
    title:
      "Inside a wreck, little daylight: visibility 15 m blue-green, sun 50 degrees, 18 to 24 m, two lights of 4000 lm",
    scene: {
      visibility_m: 15,
      water_hue: "blue_green",
      sun_elevation_deg: 50,
      overhead: "wreck",
      min_depth_m: 18,
      max_depth_m: 24,
      lamps: [twoLights],
    },
  },
  {
    page: "lagoon-at-noon",
    title:
      "Lagoon over sand at noon: visibility 30 m blue, sun 80 degrees, 1 to 4 m, f/2.8, 50 frames a second",
    scene: {
      visibility_m: 30,
      water_hue: "blue",
      sun_elevation_deg: 80,
      min_depth_m: 1,
      max_depth_m: 4,
      bottom: "sand",
      bottom_depth_m: 5,
      f_number: 2.8,
      frame_rate_fps: 50,
      camera_class: "interchangeable",
      filter_change_underwater: "flip",
    },
  },
  {
    page: "low-sun",
    title: "Reef with the sun at 12 degrees: visibility 20 m blue, 4 to 12 m, no lights",
    scene: {
      visibility_m: 20,
      water_hue: "blue",
      sun_elevation_deg: 12,
      min_depth_m: 4,
      max_depth_m: 12,
    },
  },
  {
    page: "overcast",
    title:
      "Reef under a closed cloud: visibility 18 m blue-green, sun 45 degrees behind it, 5 to 15 m, no lights",
    scene: {
      visibility_m: 18,
      water_hue: "blue_green",
      sun_elevation_deg: 45,
      cloud_oktas: 8,
      min_depth_m: 5,
      max_depth_m: 15,
      camera_class: "interchangeable",
    },
  },
  {
    page: "pelagic",
    title:
      "Big animals in open water, out of reach: visibility 35 m blue, sun 60 degrees, 6 to 18 m, 5 m away",
    scene: {
      visibility_m: 35,
      water_hue: "blue",
      sun_elevation_deg: 60,
      min_depth_m: 6,
      max_depth_m: 18,
      subject_distance_m: 5,
      subject_in_reach: false,
      camera_class: "interchangeable",
    },
  },
  {
    page: "night-macro",
    title:
      "Small animals at night: visibility 12 m blue-green, no daylight, 6 to 12 m, one light of 2000 lm at 0.25 m",
    scene: {
      visibility_m: 12,
      water_hue: "blue_green",
      daylight_basis: "none",
      min_depth_m: 6,
      max_depth_m: 12,
      subject_distance_m: 0.2,
      lamps: [{ flux_lm: 2000, count: 1, beam_angle_deg: 80, distance_m: 0.25 }],
      min_f_number: 5.6,
      max_f_number: 22,
      camera_class: "interchangeable",
    },
  },
  {
    page: "brown-lake",
    title: "A brown lake: visibility 3 m, sun 50 degrees, 2 to 6 m, one light of 3000 lm",
    scene: {
      visibility_m: 3,
      water_hue: "brown",
      sun_elevation_deg: 50,
      min_depth_m: 2,
      max_depth_m: 6,
      subject_distance_m: 0.5,
      lamps: [{ flux_lm: 3000, count: 1, distance_m: 0.5 }],
    },
  },
  {
    page: "under-ice",
    title:
      "Under 0.4 m of ice with 5 cm of snow: visibility 12 m green, sun 20 degrees, 2 to 8 m, two lights of 4000 lm",
    scene: {
      visibility_m: 12,
      water_hue: "green",
      sun_elevation_deg: 20,
      overhead: "ice",
      ice_thickness_m: 0.4,
      snow_thickness_m: 0.05,
      min_depth_m: 2,
      max_depth_m: 8,
      lamps: [twoLights],
      camera_class: "interchangeable",
    },
  },
  {
    page: "action-camera-on-auto",
    title:
      "An action camera on automatic, with a red filter in a frame: visibility 20 m blue, sun 60 degrees, 4 to 14 m",
    scene: {
      visibility_m: 20,
      water_hue: "blue",
      sun_elevation_deg: 60,
      min_depth_m: 4,
      max_depth_m: 14,
      camera_class: "action",
      exposure_mode: "auto",
      white_balance_mode: "auto",
      kit: [{ id: "snap-red", item: "lens_filter", filter_kind: "red", filter_density: 0.8 }],
    },
  },
  {
    page: "log-ten-bit",
    title: "Log in 10 bits, graded shot by shot: visibility 25 m blue, sun 55 degrees, 6 to 20 m",
    scene: {
      visibility_m: 25,
      water_hue: "blue",
      sun_elevation_deg: 55,
      min_depth_m: 6,
      max_depth_m: 20,
      camera_class: "cinema",
      bits: 10,
      recording_curve: "log",
      finish: "basic_edit",
      min_iso: 800,
      frame_rate_fps: 25,
    },
  },
  {
    page: "three-filters",
    title: "A kit of three filters: visibility 22 m blue, sun 50 degrees, 5 to 16 m",
    scene: {
      visibility_m: 22,
      water_hue: "blue",
      sun_elevation_deg: 50,
      min_depth_m: 5,
      max_depth_m: 16,
      kit: [
        { id: "soft-red", item: "lens_filter", filter_kind: "red", filter_density: 0.4 },
        { id: "full-red", item: "lens_filter", filter_kind: "red", filter_density: 0.9 },
        { id: "magenta", item: "lens_filter", filter_kind: "magenta", filter_density: 0.5 },
      ],
    },
  },
  {
    page: "strong-lights-close",
    title:
      "Strong lights close to the reef: visibility 20 m blue, sun 60 degrees, 10 to 18 m, two lights of 15,000 lm at 0.5 m",
    scene: {
      visibility_m: 20,
      water_hue: "blue",
      sun_elevation_deg: 60,
      min_depth_m: 10,
      max_depth_m: 18,
      subject_distance_m: 0.6,
      lamps: [{ flux_lm: 15000, count: 2, beam_angle_deg: 120, distance_m: 0.5 }],
      camera_class: "interchangeable",
    },
  },
  {
    page: "wall-against-the-sun",
    title: "A wall with the sun in the picture: visibility 25 m blue, sun 50 degrees, 8 to 20 m, no lights",
    scene: {
      visibility_m: 25,
      water_hue: "blue",
      sun_elevation_deg: 50,
      min_depth_m: 8,
      max_depth_m: 20,
      sun_side: "in_frame",
      camera_tilt_deg: 20,
      camera_class: "interchangeable",
    },
  },
  {
    page: "fresh-quarry",
    title:
      "A quarry for a course: visibility 6 m green, sun 55 degrees, 3 to 12 m, a compact camera and a grey card",
    scene: {
      visibility_m: 6,
      water_hue: "green",
      sun_elevation_deg: 55,
      min_depth_m: 3,
      max_depth_m: 12,
      camera_class: "compact",
    },
  },
];
