import type { Scene } from "../scene/scene.js";
import type { SceneRuleParameters } from "./all.js";

const lamp = { flux_lm: 4000, distance_m: 0.8 };
const samples = [
  { wavelength_nm: 450, kd_per_m: 0.06 },
  { wavelength_nm: 650, kd_per_m: 0.38 },
];
const curve = [
  { wavelength_nm: 450, transmittance: 0.2 },
  { wavelength_nm: 650, transmittance: 0.9 },
];

const pair = {
  red_without: 0.4,
  green_without: 0.5,
  blue_without: 0.45,
  red_with: 0.34,
  green_with: 0.15,
  blue_with: 0.12,
};

const codes = [
  { light_share: 0, code_share: 0.06 },
  { light_share: 1, code_share: 1 },
];

const sensor = [
  { wavelength_nm: 400, red: 0.01, green: 0.02, blue: 0.2 },
  { wavelength_nm: 460, red: 0.02, green: 0.1, blue: 0.85 },
  { wavelength_nm: 530, red: 0.06, green: 1, blue: 0.15 },
  { wavelength_nm: 600, red: 0.75, green: 0.3, blue: 0.02 },
  { wavelength_nm: 700, red: 0.05, green: 0.02, blue: 0 },
];

const floor = [
  { wavelength_nm: 450, reflectance: 0.2 },
  { wavelength_nm: 650, reflectance: 0.3 },
];

const card = { depth_m: 3, red: 0.2, green: 0.3, blue: 0.4 };
const noon = { latitude_deg: -47.3, longitude_deg: -128.4, time: "2026-03-10T20:15:00Z" };

/** Scenes that a rule lets pass, and scenes that it refuses with the pointers of what it refuses. */
export const sceneCases: Record<
  keyof SceneRuleParameters,
  { passes: Scene[]; refuses: [Scene, string[]][] }
> = {
  one_water_basis: {
    passes: [{ water_type: "IB" }, { kd_samples: samples }],
    refuses: [
      [{}, [""]],
      [{ water_type: "IB", kd_samples: samples }, ["/water_type", "/kd_samples"]],
    ],
  },
  water_companions: {
    passes: [
      { water_type: "IB" },
      { visibility_m: 20, water_hue: "blue" },
      { card_samples: [card, card], transfer_curve: "linear", locked_balance: true },
    ],
    refuses: [
      [{ visibility_m: 20 }, ["/visibility_m"]],
      [{ secchi_depth_m: 20 }, ["/secchi_depth_m"]],
      [{ card_samples: [card, card] }, ["/card_samples"]],
      [{ water_type: "IB", water_hue: "blue" }, ["/water_hue"]],
      [
        { water_type: "IB", transfer_curve: "srgb", locked_exposure: true },
        ["/transfer_curve", "/locked_exposure"],
      ],
    ],
  },
  kd_samples_rising: {
    passes: [{ kd_samples: samples }, {}],
    refuses: [
      [{ kd_samples: [...samples].reverse() }, ["/kd_samples/1/wavelength_nm"]],
      [{ kd_samples: [...samples, ...samples.slice(1)] }, ["/kd_samples/2/wavelength_nm"]],
    ],
  },
  card_exposure_whole: {
    passes: [{ card_samples: [card, { ...card, iso: 200, shutter_s: 0.02, f_number: 4 }] }, {}],
    refuses: [[{ card_samples: [card, { ...card, shutter_s: 0.02 }] }, ["/card_samples/1/shutter_s"]]],
  },
  card_gains_whole: {
    passes: [{ card_samples: [card, { ...card, red_gain: 2, green_gain: 1, blue_gain: 1.5 }] }],
    refuses: [[{ card_samples: [{ ...card, red_gain: 2, blue_gain: 1 }] }, ["/card_samples/0/red_gain"]]],
  },
  sun_with_basis_sun: {
    passes: [
      { sun_elevation_deg: 40 },
      { daylight_basis: "sun", sun_elevation_deg: 40 },
      { daylight_basis: "none" },
    ],
    refuses: [[{ daylight_basis: "none", sun_elevation_deg: 40 }, ["/sun_elevation_deg"]]],
  },
  place_with_basis_place_time: {
    passes: [noon, { daylight_basis: "place_time", ...noon }, { daylight_basis: "none" }],
    refuses: [
      [{ daylight_basis: "sun", ...noon }, ["/latitude_deg", "/longitude_deg", "/time"]],
      [{ daylight_basis: "none", time_zone: "Etc/GMT+9" }, ["/time_zone"]],
    ],
  },
  place_and_time_whole: {
    passes: [
      { daylight_basis: "place_time", ...noon },
      {
        daylight_basis: "place_time",
        latitude_deg: 0,
        longitude_deg: 0,
        local_time: "2026-03-10T10:15",
        time_zone: "Etc/GMT+9",
      },
      { daylight_basis: "sun" },
    ],
    refuses: [
      [{ daylight_basis: "place_time" }, ["/latitude_deg", "/longitude_deg", "/time"]],
      [{ latitude_deg: 0, longitude_deg: 0 }, ["/time"]],
      [{ daylight_basis: "place_time", ...noon, time_zone: "Etc/GMT+9" }, ["/time"]],
      [
        { daylight_basis: "place_time", latitude_deg: 0, longitude_deg: 0, local_time: "2026-03-10T10:15" },
        ["/time_zone"],
      ],
      [{ daylight_basis: "place_time", longitude_deg: 0, time: noon.time }, ["/latitude_deg"]],
    ],
  },
  // Leap years by the Gregorian calendar: 2000 is one, 2100 is none.
  day_exists: {
    passes: [{ time: "2000-02-29T10:00:00Z" }, { local_time: "2026-12-31T10:00" }],
    refuses: [
      [{ time: "2100-02-29T10:00:00Z" }, ["/time"]],
      [{ local_time: "2026-04-31T10:00" }, ["/local_time"]],
    ],
  },
  one_depth: {
    passes: [{ depth_m: 5 }, { min_depth_m: 5, max_depth_m: 9 }],
    refuses: [
      [{}, [""]],
      [{ min_depth_m: 5 }, ["/min_depth_m"]],
      [{ max_depth_m: 5 }, ["/max_depth_m"]],
      [{ depth_m: 5, max_depth_m: 9 }, ["/depth_m"]],
      [{ depth_m: 5, min_depth_m: 5, max_depth_m: 9 }, ["/depth_m"]],
    ],
  },
  depths_in_order: {
    passes: [
      { min_depth_m: 5, max_depth_m: 9 },
      { min_depth_m: 9, max_depth_m: 9 },
    ],
    refuses: [[{ min_depth_m: 9.1, max_depth_m: 9 }, ["/min_depth_m"]]],
  },
  one_sun_side: {
    passes: [{ sun_side: "beside" }, { ...noon, camera_heading_deg: 90 }],
    refuses: [[{ ...noon, sun_side: "beside", camera_heading_deg: 90 }, ["/sun_side"]]],
  },
  heading_with_place_time: {
    passes: [{ ...noon, camera_heading_deg: 90 }, { sun_side: "unknown" }],
    refuses: [
      [{ camera_heading_deg: 90 }, ["/camera_heading_deg"]],
      [{ daylight_basis: "none", camera_heading_deg: 90 }, ["/camera_heading_deg"]],
    ],
  },
  one_bottom: {
    passes: [{ bottom: "sand" }, { bottom_reflectance: floor }],
    refuses: [[{ bottom: "sand", bottom_reflectance: floor }, ["/bottom_reflectance"]]],
  },
  bottom_with_depth: {
    passes: [{ bottom: "none" }, { bottom: "sand", bottom_depth_m: 20 }, { bottom_depth_m: 20 }],
    refuses: [[{ bottom: "none", bottom_depth_m: 20 }, ["/bottom_depth_m"]]],
  },
  bottom_below_camera: {
    passes: [
      { depth_m: 12, bottom_depth_m: 12 },
      { min_depth_m: 5, max_depth_m: 18, bottom_depth_m: 18.5 },
    ],
    refuses: [
      [{ depth_m: 12, bottom_depth_m: 11.9 }, ["/bottom_depth_m"]],
      [{ min_depth_m: 5, max_depth_m: 18, bottom_depth_m: 12 }, ["/bottom_depth_m"]],
    ],
  },
  bottom_reflectance_rising: {
    passes: [{ bottom_reflectance: floor }, {}],
    refuses: [[{ bottom_reflectance: [...floor].reverse() }, ["/bottom_reflectance/1/wavelength_nm"]]],
  },
  iso_limits_in_order: {
    passes: [{ min_iso: 200, max_iso: 3200 }, { min_iso: 400, max_iso: 400 }, {}],
    refuses: [
      [{ min_iso: 3200, max_iso: 200 }, ["/min_iso"]],
      [{ min_iso: 12800 }, ["/min_iso"]],
      [{ max_iso: 50 }, ["/max_iso"]],
    ],
  },
  iso_within_limits: {
    passes: [{ iso: 100 }, { iso: 6400 }, { iso: 12800, max_iso: 12800 }],
    refuses: [
      [{ iso: 12800 }, ["/iso"]],
      [{ iso: 50 }, ["/iso"]],
      [{ iso: 100, min_iso: 200 }, ["/iso"]],
    ],
  },
  f_number_limits_in_order: {
    passes: [{ min_f_number: 4, max_f_number: 11 }, {}],
    refuses: [
      [{ min_f_number: 11, max_f_number: 4 }, ["/min_f_number"]],
      [{ max_f_number: 2 }, ["/max_f_number"]],
    ],
  },
  f_number_within_limits: {
    passes: [{ f_number: 2.8 }, { f_number: 16 }],
    refuses: [
      [{ f_number: 1.8 }, ["/f_number"]],
      [{ f_number: 22 }, ["/f_number"]],
    ],
  },
  white_balance_cct_K_limits_in_order: {
    passes: [{ white_balance_min_cct_K: 2000, white_balance_max_cct_K: 9000 }, {}],
    refuses: [
      [{ white_balance_min_cct_K: 9000, white_balance_max_cct_K: 9000 }, ["/white_balance_min_cct_K"]],
      [{ white_balance_max_cct_K: 2000 }, ["/white_balance_max_cct_K"]],
    ],
  },
  one_shutter: {
    passes: [{ shutter_s: 0.02 }, { frame_rate_fps: 25 }, { shutter_angle_deg: 90 }, {}],
    refuses: [[{ shutter_s: 0.02, shutter_angle_deg: 90 }, ["/shutter_s"]]],
  },
  shutter_within_frame: {
    passes: [
      { shutter_s: 0.04, frame_rate_fps: 25 },
      { shutter_s: 0.04166667, frame_rate_fps: 24 },
    ],
    refuses: [[{ shutter_s: 0.05, frame_rate_fps: 25 }, ["/shutter_s"]]],
  },
  shutter_not_too_short: {
    passes: [{ frame_rate_fps: 1000, shutter_angle_deg: 90 }],
    refuses: [[{ frame_rate_fps: 1000, shutter_angle_deg: 1 }, ["/shutter_angle_deg"]]],
  },
  one_recording_curve: {
    passes: [{ recording_curve: "hlg" }, { recording_curve_points: codes }],
    refuses: [[{ recording_curve: "log", recording_curve_points: codes }, ["/recording_curve_points"]]],
  },
  recording_curve_points_rising: {
    passes: [{ recording_curve_points: codes }, {}],
    refuses: [
      [
        {
          recording_curve_points: [
            ...codes.slice(0, 1),
            { light_share: 0, code_share: 0.02 },
            ...codes.slice(1),
          ],
        },
        ["/recording_curve_points/1/light_share", "/recording_curve_points/1/code_share"],
      ],
      // Codes that tell nothing apart.
      [
        {
          recording_curve_points: [
            { light_share: 0, code_share: 0 },
            { light_share: 1, code_share: 1e-9 },
          ],
        },
        ["/recording_curve_points/1/code_share"],
      ],
    ],
  },
  recording_curve_points_whole: {
    passes: [{ recording_curve_points: codes }, {}],
    refuses: [
      [
        {
          recording_curve_points: [
            { light_share: 0.1, code_share: 0.3 },
            { light_share: 0.9, code_share: 0.95 },
          ],
        },
        ["/recording_curve_points/0/light_share", "/recording_curve_points/1/light_share"],
      ],
    ],
  },
  sensor_samples_rising: {
    passes: [{ sensor_samples: sensor }, {}],
    refuses: [
      [
        { sensor_samples: sensor.map((sample) => ({ ...sample, wavelength_nm: 500 })) },
        [1, 2, 3, 4].map((n) => `/sensor_samples/${n}/wavelength_nm`),
      ],
    ],
  },
  sensor_samples_usable: {
    passes: [{ sensor_samples: sensor }, {}],
    refuses: [
      // Half of the red is missing.
      [{ sensor_samples: sensor.slice(0, -1) }, ["/sensor_samples"]],
      // One channel in another unit.
      [{ sensor_samples: sensor.map((s) => ({ ...s, blue: s.blue / 100 })) }, ["/sensor_samples"]],
      // Red and blue swapped.
      [{ sensor_samples: sensor.map((s) => ({ ...s, red: s.blue, blue: s.red })) }, ["/sensor_samples"]],
      // Nearly without colours.
      [
        {
          sensor_samples: sensor.map((s) => ({
            ...s,
            red: s.green + 0.02 * s.red,
            blue: s.green + 0.02 * s.blue,
          })),
        },
        ["/sensor_samples"],
      ],
    ],
  },
  kelvin_with_mode: {
    passes: [
      { white_balance_mode: "kelvin", white_balance_kelvin_K: 5600 },
      { white_balance_mode: "auto" },
      {},
    ],
    refuses: [
      [{ white_balance_mode: "kelvin" }, ["/white_balance_mode"]],
      [{ white_balance_kelvin_K: 5600 }, ["/white_balance_kelvin_K"]],
      [{ white_balance_mode: "auto", white_balance_kelvin_K: 5600 }, ["/white_balance_kelvin_K"]],
    ],
  },
  kelvin_within_limits: {
    passes: [
      { white_balance_mode: "kelvin", white_balance_kelvin_K: 10000 },
      { white_balance_kelvin_K: 12000, camera_class: "cinema" },
      {},
    ],
    refuses: [
      [{ white_balance_kelvin_K: 12000 }, ["/white_balance_kelvin_K"]],
      [{ white_balance_kelvin_K: 9000, camera_class: "phone" }, ["/white_balance_kelvin_K"]],
      [{ white_balance_kelvin_K: 5000, white_balance_min_cct_K: 5200 }, ["/white_balance_kelvin_K"]],
    ],
  },
  auto_exposure_free: {
    passes: [
      { exposure_mode: "auto", iso: 400, f_number: 4 },
      { exposure_mode: "manual", iso: 400, f_number: 4, shutter_s: 0.02 },
    ],
    refuses: [[{ exposure_mode: "auto", iso: 400, f_number: 4, shutter_s: 0.02 }, ["/exposure_mode"]]],
  },
  card_balance_not_auto: {
    passes: [{ white_balance_mode: "auto", locked_balance: false }, { locked_balance: true }],
    refuses: [[{ white_balance_mode: "auto", locked_balance: true }, ["/white_balance_mode"]]],
  },
  one_lens_filter: {
    passes: [{ filter_transmittance: curve }, { filter_kind: "red", filter_density: 0.6 }],
    refuses: [
      [{ filter_transmittance: curve, filter_kind: "red", filter_density: 0.6 }, ["/filter_transmittance"]],
      [{ filter_transmittance: curve, filter_density: 0.6 }, ["/filter_transmittance"]],
      [{ filter_transmittance: curve, filter_stops: 2 }, ["/filter_transmittance"]],
      [{ filter_transmittance: curve, filter_samples: [pair] }, ["/filter_samples"]],
      [{ filter_kind: "red", filter_density: 0.6, filter_samples: [pair] }, ["/filter_samples"]],
    ],
  },
  one_filter_strength: {
    passes: [
      { filter_kind: "red", filter_stops: 2 },
      { kit: [{ id: "a", item: "lens_filter", filter_kind: "red", filter_stops: 2 }] },
    ],
    refuses: [
      [{ filter_kind: "red", filter_density: 0.6, filter_stops: 2 }, ["/filter_stops"]],
      [
        {
          kit: [
            { id: "a", item: "lens_filter", filter_kind: "red", filter_density: 0.6 },
            { id: "b", item: "lens_filter", filter_kind: "red", filter_density: 0.6, filter_stops: 2 },
          ],
        },
        ["/kit/1/filter_stops"],
      ],
    ],
  },
  lens_filter_pair: {
    passes: [{ filter_kind: "red", filter_density: 0.6 }, { filter_kind: "red", filter_stops: 2 }, {}],
    refuses: [
      [{ filter_kind: "red" }, ["/filter_kind"]],
      [{ filter_density: 0.6 }, ["/filter_density"]],
      [{ filter_stops: 2 }, ["/filter_stops"]],
    ],
  },
  filter_transmittance_rising: {
    passes: [{ filter_transmittance: curve }],
    refuses: [[{ filter_transmittance: [...curve].reverse() }, ["/filter_transmittance/1/wavelength_nm"]]],
  },
  filter_samples_agree: {
    passes: [{ filter_samples: [pair] }, { filter_samples: [pair, { ...pair, red_with: 0.33 }] }],
    refuses: [
      [{ filter_samples: [pair, { ...pair, red_with: 0.6 }] }, ["/filter_samples/1"]],
      [{ filter_samples: [pair, { ...pair, blue_with: 0.06 }] }, ["/filter_samples/1"]],
      [
        { kit: [{ id: "a", item: "lens_filter", filter_samples: [{ ...pair, green_with: 0.9 }] }] },
        ["/kit/0/filter_samples/0"],
      ],
    ],
  },
  kit_ids_unique: {
    passes: [
      {
        kit: [
          { id: "a", item: "lamp" },
          { id: "b", item: "lamp" },
        ],
      },
      { kit: [] },
    ],
    refuses: [
      [
        {
          kit: [
            { id: "a", item: "lamp" },
            { id: "a", item: "lamp" },
          ],
        },
        ["/kit/1/id"],
      ],
    ],
  },
  kit_filters: {
    passes: [
      { kit: [{ id: "a", item: "lens_filter", filter_kind: "red", filter_density: 0.6 }] },
      { kit: [{ id: "a", item: "lamp_filter", filter_transmittance: curve }] },
    ],
    refuses: [
      [{ kit: [{ id: "a", item: "lens_filter" }] }, ["/kit/0"]],
      [{ kit: [{ id: "a", item: "lens_filter", filter_kind: "red" }] }, ["/kit/0/filter_kind"]],
      [{ kit: [{ id: "a", item: "lens_filter", filter_stops: 2 }] }, ["/kit/0/filter_stops"]],
      [{ kit: [{ id: "a", item: "lamp", filter_stops: 2 }] }, ["/kit/0"]],
      [
        { kit: [{ id: "a", item: "lens_filter", filter_samples: [pair], filter_transmittance: curve }] },
        ["/kit/0"],
      ],
      [
        { kit: [{ id: "a", item: "lens_filter", filter_kind: "red", filter_transmittance: curve }] },
        ["/kit/0"],
      ],
      [{ kit: [{ id: "a", item: "lamp", filter_kind: "red", filter_density: 0.6 }] }, ["/kit/0"]],
    ],
  },
  kit_curves_rising: {
    passes: [{ kit: [{ id: "a", item: "lens_filter", filter_transmittance: curve }] }],
    refuses: [
      [
        { kit: [{ id: "a", item: "lens_filter", filter_transmittance: [...curve].reverse() }] },
        ["/kit/0/filter_transmittance/1/wavelength_nm"],
      ],
    ],
  },
  lamp_colour: {
    passes: [{ lamps: [{ ...lamp, led: "LED-B1" }] }, { lamp_cct_K: 5600 }],
    refuses: [
      [{ lamps: [lamp, { ...lamp, led: "LED-B1", cct_K: 5600 }] }, ["/lamps/1/led"]],
      [{ lamp_led: "LED-B1", lamp_cct_K: 5600 }, ["/lamp_led"]],
    ],
  },
  lamp_filter_pair: {
    passes: [{ lamps: [{ ...lamp, filter_kind: "blue", filter_density: 0.3 }] }, { lamps: [lamp] }],
    refuses: [
      [{ lamps: [{ ...lamp, filter_kind: "blue" }] }, ["/lamps/0/filter_kind"]],
      [{ lamp_filter_density: 0.3 }, ["/lamp_filter_density"]],
    ],
  },
  lamps_once: {
    passes: [{ lamps: [lamp] }, { lamp_flux_lm: 4000 }],
    refuses: [[{ lamps: [], lamp_flux_lm: 4000 }, ["/lamps"]]],
  },
  lamp_complete: {
    passes: [{ lamp_flux_lm: 4000, lamp_distance_m: 0.8 }, {}],
    refuses: [
      [{ lamp_flux_lm: 4000 }, ["/lamp_flux_lm"]],
      [{ lamp_count: 2 }, ["/lamp_count", "/lamp_count"]],
    ],
  },
  lead_distance_with_stops: {
    passes: [{ wanted_lead_stops: 3 }, { wanted_lead_stops: 3, wanted_lead_distance_m: 0.8 }, {}],
    refuses: [[{ wanted_lead_distance_m: 0.8 }, ["/wanted_lead_distance_m"]]],
  },
  overhead_parts: {
    passes: [
      { overhead: "ice", ice_thickness_m: 0.5, snow_thickness_m: 0.1 },
      { overhead: "cavern", daylight_open_share: 0.2 },
      { overhead: "none" },
    ],
    refuses: [
      [{ ice_thickness_m: 0.5 }, ["/ice_thickness_m"]],
      [{ overhead: "ice", daylight_open_share: 0.2 }, ["/daylight_open_share"]],
      [{ overhead: "cave", daylight_basis: "none", snow_thickness_m: 0.1 }, ["/snow_thickness_m"]],
    ],
  },
  cave_is_dark: {
    passes: [{ overhead: "cave" }, { overhead: "cave", daylight_basis: "none" }, { overhead: "cavern" }],
    refuses: [
      [{ overhead: "cave", daylight_basis: "sun" }, ["/overhead"]],
      [{ overhead: "cave", ...noon }, ["/overhead"]],
    ],
  },
  mounting_kinds: {
    passes: [
      { water_type: "IB" },
      { port_kind: "flat", lens_kind: "wide", field_of_view_deg: 90, rings: [] },
      { f_number: 8, filter_change_underwater: "flip" },
    ],
    refuses: [
      [{ lens_thread_mm: 52 }, ["/lens_thread_mm", "/lens_thread_mm"]],
      [{ port_kind: "flat", field_of_view_deg: 90 }, ["/port_kind"]],
      [{ lens_kind: "wide" }, ["/lens_kind"]],
      [{ rings: [] }, ["/rings", "/rings"]],
    ],
  },
};
